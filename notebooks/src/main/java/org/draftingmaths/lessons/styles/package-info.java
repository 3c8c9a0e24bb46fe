/** Whole styles from measured body to printed pages, each in a scenario of its own. */
package org.draftingmaths.lessons.styles;
