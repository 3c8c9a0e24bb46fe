package org.draftingmaths.lessons.runner;

import java.util.List;

/**
 * One cell of a lesson.
 *
 * @param number of a code cell, counted from one as Jupyter does when all are run; 0 for a cell of prose
 * @param source the text of the cell
 * @param tags from the cell's metadata, such as {@code answer}
 */
public record LessonCell(int number, String source, List<String> tags) {
    /** What the learners' copy leaves out. */
    public static final String ANSWER = "answer";

    /** Keeps a copy of the tags. */
    public LessonCell {
        tags = List.copyOf(tags);
    }

    /** Whether the cell is run. */
    public boolean isCode() {
        return number > 0;
    }

    /** Whether the learners' copy empties the cell. */
    public boolean isAnswer() {
        return tags.contains(ANSWER);
    }
}
