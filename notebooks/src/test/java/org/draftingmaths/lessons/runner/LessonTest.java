package org.draftingmaths.lessons.runner;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.google.gson.JsonArray;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import org.draftingmaths.lessons.kernel.CellException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

@Timeout(60)
class LessonTest {
    private static final Duration LIMIT = Duration.ofSeconds(30);

    @Test
    void numbersCodeCellsAsJupyterDoes() {
        JsonArray cells = new JsonArray();
        cells.add(Notebooks.prose("# Title"));
        cells.add(Notebooks.code("1"));
        cells.add(Notebooks.prose("text"));
        cells.add(Notebooks.code("2", LessonCell.ANSWER));
        assertThat(Notebooks.of(cells).cells())
                .containsExactly(
                        new LessonCell(0, "# Title", List.of()),
                        new LessonCell(1, "1", List.of()),
                        new LessonCell(0, "text", List.of()),
                        new LessonCell(2, "2", List.of("answer")));
    }

    @Test
    void readsASourceGivenAsLines() {
        String json = Notebooks.of("X").json().replace("\"X\"", "[\"int a = 1;\\n\", \"a\"]");
        assertThat(Lesson.parse("x", json).cells().get(0).source()).isEqualTo("int a = 1;\na");
    }

    @Test
    void learnersGetPromptsForAnswersAndNoOutputs() throws CellException {
        JsonArray cells = new JsonArray();
        cells.add(Notebooks.prose("Because.", LessonCell.ANSWER));
        cells.add(Notebooks.code("int a = 42;\na", LessonCell.ANSWER));
        cells.add(Notebooks.code("a + 1"));
        Lesson full = LessonRunner.run(Notebooks.of(cells), LIMIT);
        Lesson copy = full.withoutAnswers();
        assertThat(full.json()).contains("Because.", "42", "43");
        assertThat(copy.json()).doesNotContain("Because.", "42", "43");
        // Jupyter calls a code cell invalid that does not say null.
        assertThat(copy.json()).containsSubsequence("\"execution_count\": null", "\"execution_count\": null");
        assertThat(copy.cells())
                .extracting(LessonCell::source)
                .containsExactly("*Your answer:*", "// Your answer:", "a + 1");
    }

    @Test
    void storesOutputsAsJupyterDoes() throws CellException {
        Lesson run = LessonRunner.run(
                Notebooks.of(
                        "System.out.println(\"a\\nb\");\ndisplay(\"<b>\", \"text/html\");\nSystem.out.print(\"c\");\n7"),
                LIMIT);
        assertThat(run.json()).isEqualTo("""
                {
                 "cells": [
                  {
                   "cell_type": "code",
                   "execution_count": 1,
                   "metadata": {
                    "tags": []
                   },
                   "outputs": [
                    {
                     "name": "stdout",
                     "output_type": "stream",
                     "text": [
                      "a\\n",
                      "b\\n"
                     ]
                    },
                    {
                     "data": {
                      "text/html": [
                       "<b>"
                      ]
                     },
                     "metadata": {},
                     "output_type": "display_data"
                    },
                    {
                     "name": "stdout",
                     "output_type": "stream",
                     "text": [
                      "c"
                     ]
                    },
                    {
                     "data": {
                      "text/plain": [
                       "7"
                      ]
                     },
                     "execution_count": 1,
                     "metadata": {},
                     "output_type": "execute_result"
                    }
                   ],
                   "source": [
                    "System.out.println(\\"a\\\\nb\\");\\n",
                    "display(\\"<b>\\", \\"text/html\\");\\n",
                    "System.out.print(\\"c\\");\\n",
                    "7"
                   ]
                  }
                 ],
                 "metadata": {
                  "kernelspec": {
                   "display_name": "Java",
                   "language": "java",
                   "name": "java"
                  }
                 },
                 "nbformat": 4,
                 "nbformat_minor": 4
                }
                """);
    }

    @Test
    void aFailureNamesLessonCellAndLine() {
        assertThatThrownBy(() -> LessonRunner.run(Notebooks.of("int a = 0;", "int b = 1;\nb / a"), LIMIT))
                .isInstanceOf(CellException.class)
                .hasMessageStartingWith("small.ipynb, cell 2, line 2: java.lang.ArithmeticException: / by zero\n");
    }

    @Test
    void aLessonThatDoesNotEndIsEnded() {
        assertThatThrownBy(() -> LessonRunner.run(Notebooks.of("while (true) {}"), Duration.ofSeconds(1)))
                .hasMessageStartingWith("small.ipynb, cell 1, line 1: interrupted");
    }

    @Test
    void learnersCopiesNeverReplaceAFile(@TempDir Path folder) throws IOException {
        Path lessons = Files.createDirectories(folder.resolve("lessons"));
        Path copies = folder.resolve("copies");
        Files.writeString(lessons.resolve("01-a.ipynb"), Notebooks.of("1").json());
        Files.writeString(lessons.resolve("02-b.ipynb"), Notebooks.of("2").json());
        Files.createDirectories(copies);
        Files.writeString(copies.resolve("02-b.ipynb"), "work");
        assertThatThrownBy(() -> LessonCommand.writeLearnersCopies(lessons, copies))
                .isInstanceOf(IOException.class)
                .hasMessageContaining("02-b.ipynb");
        assertThat(copies.resolve("01-a.ipynb")).doesNotExist();
        Files.delete(copies.resolve("02-b.ipynb"));
        LessonCommand.writeLearnersCopies(lessons, copies);
        assertThat(copies.resolve("01-a.ipynb")).exists();
        assertThat(copies.resolve("02-b.ipynb")).exists();
    }
}
