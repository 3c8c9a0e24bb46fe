/**
 * What the work costs, against general-purpose libraries at equal measured accuracy, in one run. Only ratios are quoted:
 * absolute times move with the machine.
 */
package org.draftingmaths.benchmarks;
