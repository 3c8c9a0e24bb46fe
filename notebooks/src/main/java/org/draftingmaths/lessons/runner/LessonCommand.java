package org.draftingmaths.lessons.runner;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.stream.Stream;
import org.draftingmaths.lessons.kernel.CellException;

/** What the script for lessons asks of Java. */
public final class LessonCommand {
    /** For one lesson; the slowest takes a few seconds. */
    static final Duration LIMIT = Duration.ofMinutes(2);

    private static final String USAGE = "usage: learners LESSONS FOLDER | store LESSONS";

    private LessonCommand() {}

    /**
     * Makes copies without answers, or runs lessons and writes their outputs into them.
     *
     * @param arguments {@code learners LESSONS FOLDER} or {@code store LESSONS}
     */
    public static void main(String[] arguments) {
        try {
            obey(arguments);
        } catch (IOException | CellException e) {
            System.err.println(e.getMessage());
            System.exit(1);
        }
        // A thread that a cell started must not keep the process.
        System.exit(0);
    }

    private static void obey(String... arguments) throws IOException, CellException {
        if (arguments.length == 3 && arguments[0].equals("learners")) {
            writeLearnersCopies(Path.of(arguments[1]), Path.of(arguments[2]));
        } else if (arguments.length == 2 && arguments[0].equals("store")) {
            storeOutputs(Path.of(arguments[1]));
        } else {
            throw new IllegalArgumentException(USAGE + ", but got: " + String.join(" ", arguments));
        }
    }

    /**
     * The lessons in a folder: its notebooks, in the order of their names.
     *
     * @throws IOException if the folder cannot be read
     */
    static List<Path> lessonsIn(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(f -> f.getFileName().toString().endsWith(".ipynb"))
                    .sorted()
                    .toList();
        }
    }

    /**
     * Copies every lesson without its answers and outputs. A file that is there already is somebody's work: refused.
     *
     * @throws IOException if a file exists, or cannot be read or written
     */
    static void writeLearnersCopies(Path lessons, Path folder) throws IOException {
        Files.createDirectories(folder);
        for (Path lesson : lessonsIn(lessons)) {
            Path copy = folder.resolve(lesson.getFileName());
            if (Files.exists(copy)) {
                throw new IOException("not overwritten, it may hold answers: " + copy);
            }
        }
        for (Path lesson : lessonsIn(lessons)) {
            Path copy = folder.resolve(lesson.getFileName());
            Files.writeString(copy, Lesson.read(lesson).withoutAnswers().json());
            System.out.println(copy);
        }
    }

    /**
     * Runs every lesson and writes its outputs into its file.
     *
     * @throws IOException if a file cannot be read or written
     * @throws CellException if a lesson fails
     */
    static void storeOutputs(Path lessons) throws IOException, CellException {
        for (Path lesson : lessonsIn(lessons)) {
            Files.writeString(
                    lesson, LessonRunner.run(Lesson.read(lesson), LIMIT).json());
            System.out.println(lesson);
        }
    }
}
