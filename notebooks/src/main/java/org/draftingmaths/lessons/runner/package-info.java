/**
 * Lessons as files: reading them, running them without Jupyter, the rules by which they run on every Java kernel, and the
 * learners' copies.
 */
package org.draftingmaths.lessons.runner;
