package org.draftingmaths.lessons.runner;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.draftingmaths.lessons.kernel.CellException;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Runs every lesson of this folder, and one more that tries every kind of output. */
class LessonsTest {
    private static final Path LESSONS = Path.of("");
    private static final Path SMOKE = Path.of("src", "test", "resources");

    @TestFactory
    Stream<DynamicTest> lessonRunsAndKeepsTheRules() throws IOException {
        return Stream.concat(LessonCommand.lessonsIn(SMOKE).stream(), LessonCommand.lessonsIn(LESSONS).stream())
                .map(file -> dynamicTest(file.getFileName().toString(), () -> check(file)));
    }

    @Test
    void lessonsAreNumberedWithoutGaps() throws IOException {
        List<Path> lessons = LessonCommand.lessonsIn(LESSONS);
        for (int i = 0; i < lessons.size(); i++) {
            assertThat(lessons.get(i).getFileName().toString()).matches("%02d-[a-z0-9-]+\\.ipynb".formatted(i + 1));
        }
    }

    private static void check(Path file) throws IOException, CellException {
        Lesson lesson = Lesson.read(file);
        assertThat(LessonRules.broken(lesson)).isEmpty();
        Lesson run = LessonRunner.run(lesson, LessonCommand.LIMIT);
        assertThat(LessonRules.brokenByOutputs(run)).isEmpty();
        assertThat(LessonRules.brokenByLearners(lesson, LessonCommand.LIMIT)).isEmpty();
        assertThat(Files.readString(file))
                .as(
                        "the outputs stored in %s are what running gives; store them by: notebooks/lessons.sh --store",
                        file)
                .isEqualTo(run.json());
    }
}
