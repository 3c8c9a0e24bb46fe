package org.draftingmaths.lessons.runner;

/**
 * A place where a lesson would not run alike on every Java kernel.
 *
 * @param rule its number in {@link LessonRules}
 * @param cell number of the code cell, 0 for the notebook as a whole
 * @param line in the cell, counted from one; 0 for the notebook as a whole
 * @param what is wrong, and what to do
 */
public record Violation(int rule, int cell, int line, String what) {
    @Override
    public String toString() {
        return (cell == 0 ? "" : "cell " + cell + ", line " + line + ": ") + what + " (rule " + rule + ")";
    }
}
