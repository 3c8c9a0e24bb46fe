package org.draftingmaths.lessons.kernel;

/**
 * A part of a cell that is evaluated at one go: a snippet of Java, or a line that is addressed to the kernel.
 *
 * @param kernelLine whether it is a line such as {@code %classpath x.jar}
 * @param source for Java what JShell is given, else the line
 * @param offset where it begins in the cell
 */
public record Fragment(boolean kernelLine, String source, int offset) {}
