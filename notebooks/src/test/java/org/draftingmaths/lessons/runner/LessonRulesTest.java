package org.draftingmaths.lessons.runner;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import java.time.Duration;
import java.util.List;
import java.util.stream.Stream;
import org.draftingmaths.lessons.kernel.CellException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Each rule fails where it is broken, and only there. */
class LessonRulesTest {
    private static final Duration LIMIT = Duration.ofSeconds(30);
    private static final String CHECK = "if (mine != 4) { throw new IllegalStateException(\"not yet\"); }";

    static Stream<Arguments> brokenCells() {
        return Stream.of(
                arguments(2, 2, "int a = 1;\n%jars x.jar"),
                arguments(2, 1, "%maven org:thing:1.0"),
                arguments(2, 1, "%%javascript\nalert(1)"),
                arguments(2, 1, "%classpath /home/someone/x.jar"),
                arguments(2, 1, "%classpath lib/*.jar"),
                arguments(2, 1, "%classpath x.jar and more"),
                arguments(3, 2, "String svg = \"\";\nrender(svg, \"image/svg+xml\")"),
                arguments(3, 1, "render(svg, \"text/html\", \"image/svg+xml\")"),
                arguments(3, 2, "int a = 1;\ndisplay(a)"),
                arguments(3, 1, "display(1);"),
                arguments(3, 1, "display(1); // at the end"),
                arguments(3, 1, "render(svg, \"image/svg+xml\", \"text/html\");\nint a = 1;"),
                arguments(4, 2, "int a = 1;\nObject s = Stream.of(1);"),
                arguments(4, 1, "Function<String, String> f = null;"),
                arguments(4, 1, "Path p = null;"),
                arguments(4, 1, "import java.util.stream.Stream; Object c = Collectors.toList();"),
                arguments(4, 1, "Object s = IntStream.range(0, 2);\nimport java.util.stream.*;"),
                arguments(5, 1, "sealed interface Edge permits Line {}\nfinal class Line implements Edge {}"),
                arguments(5, 1, "class A { B b; }\nclass B { A a; }"),
                arguments(5, 2, "class A { B b; }\nclass B { C c; }\nclass C { B b; }"),
                arguments(7, 2, "int a = 1;\nassert a == 2;"),
                arguments(7, 1, "try { check(); } catch (RuntimeException e) { }"),
                arguments(8, 2, "String t = \"\"\"\n    %s of it\n    \"\"\";"),
                arguments(8, 2, "String t = \"\"\"\n% 5\n\"\"\";"));
    }

    @ParameterizedTest(name = "rule {0}: {2}")
    @MethodSource("brokenCells")
    void findsWhatBreaksARule(int rule, int line, String source) {
        assertThat(LessonRules.broken(Notebooks.of("int first = 0;", source)))
                .anySatisfy(
                        v -> assertThat(List.of(v.rule(), v.cell(), v.line())).isEqualTo(List.of(rule, 2, line)))
                .allSatisfy(v -> assertThat(v.rule()).isEqualTo(rule));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "%classpath lib/x.jar\nint a = 17\n    % 5;",
                "display(1);\nint a = 1;",
                "var shown = render(\"\", \"text/html\");",
                "render(\"<svg/>\", \"image/svg+xml\", \"text/html\")",
                "render(\"<svg/>\", \"image/svg+xml\",\n    \"text/html\");",
                "import java.util.stream.*;\nimport java.nio.file.Path;\nStream<Path> paths = null;",
                "import static java.util.stream.Collectors.toList;",
                "java.util.function.Function<String, String> f = null; // a Function of Stream",
                "record Function(double slope) {}\nFunction f = new Function(1);",
                "class A { B b; }\nclass B { int a; } // not A",
                "class Node { Node next; }",
                "String sealed = \"sealed type\"; // permits all",
                "String said = \"\"\"\n    assert nothing, 100 %\n    \"\"\";",
                "try { a(); } catch (RuntimeException e) { throw new IllegalStateException(e); }",
                "// % in a comment: assert 'x'\nchar c = '\"'; int b = 1; // display(1)"
            })
    void leavesAloneWhatKeepsTheRules(String source) {
        assertThat(LessonRules.broken(Notebooks.of(source))).isEmpty();
    }

    @Test
    void anImportHoldsForLaterCellsOnly() {
        assertThat(LessonRules.broken(Notebooks.of("Path p;", "import java.nio.file.*;", "Path q;")))
                .extracting(Violation::rule, Violation::cell)
                .containsExactly(tuple(4, 1));
    }

    @Test
    void rule1WantsTheOneKernelspecAndFormat() {
        JsonObject notebook = Notebooks.of("int a = 1;").notebook();
        JsonObject kernel = notebook.getAsJsonObject("metadata").getAsJsonObject("kernelspec");
        assertThat(LessonRules.broken(Lesson.parse("x", notebook.toString()))).isEmpty();
        kernel.addProperty("display_name", "Java (mine)");
        assertThat(rules(notebook)).containsExactly(1);
        notebook.getAsJsonObject("metadata").remove("kernelspec");
        assertThat(rules(notebook)).containsExactly(1);
        notebook.addProperty("nbformat", 3);
        assertThat(rules(notebook)).containsExactly(1, 1);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "new double[] {1}",
                "System.out.println(new String[2][2]);",
                "new Object()",
                "display(new int[3]);\nint a = 1;"
            })
    void rule6FindsAnAddressInTheOutputs(String source) throws CellException {
        Lesson run = LessonRunner.run(Notebooks.of("1 + 1", source), LIMIT);
        assertThat(LessonRules.brokenByOutputs(run))
                .extracting(Violation::rule, Violation::cell)
                .containsExactly(tuple(6, 2));
    }

    @Test
    void rule6AllowsTextThatOnlyLooksALittleLikeAnAddress() throws CellException {
        Lesson run = LessonRunner.run(
                Notebooks.of("System.out.println(\"two @ 12345 and a@b.example\");\nArrays.toString(new int[2])"),
                LIMIT);
        assertThat(LessonRules.brokenByOutputs(run)).isEmpty();
    }

    @Test
    void rule6DoesNotLetAMethodNameWhatDoesNotExist() {
        assertThatThrownBy(() -> LessonRunner.run(Notebooks.of("int a() { return nothing(); }"), LIMIT))
                .hasMessageStartingWith("small.ipynb, cell 1, line 1: ")
                .hasMessageContaining("method nothing()");
    }

    @Test
    void rule7RefusesATagThatHidesAFailure() {
        JsonArray cells = new JsonArray();
        cells.add(Notebooks.code("throw new RuntimeException();", "raises-exception"));
        assertThat(LessonRules.broken(Notebooks.of(cells)))
                .extracting(Violation::rule)
                .containsExactly(7);
    }

    @Test
    void rule7WantsChecksThatSeeAMissingAnswer() {
        assertThat(LessonRules.brokenByLearners(exercise("System.out.println(mine == 4);"), LIMIT))
                .extracting(Violation::rule, Violation::cell)
                .containsExactly(tuple(7, 2));
        assertThat(LessonRules.brokenByLearners(exercise(CHECK), LIMIT)).isEmpty();
        assertThat(LessonRules.brokenByLearners(Notebooks.of("int noExercise = 1;"), LIMIT))
                .isEmpty();
    }

    @Test
    void rule7AsksForEveryAnswerAlone() {
        JsonArray cells = exercise(CHECK).notebook().getAsJsonArray("cells");
        cells.add(Notebooks.code("int second = 0;"));
        cells.add(Notebooks.code("second = mine + 1;", LessonCell.ANSWER));
        cells.add(Notebooks.code("System.out.println(second == 5);"));
        assertThat(LessonRules.brokenByLearners(Notebooks.of(cells), LIMIT))
                .extracting(Violation::rule, Violation::cell)
                .containsExactly(tuple(7, 5));
    }

    @Test
    void rule7DoesNotTakeACompilersWordForACheck() {
        JsonArray cells = new JsonArray();
        cells.add(Notebooks.code("int mine = 4;", LessonCell.ANSWER));
        cells.add(Notebooks.code(CHECK));
        assertThat(LessonRules.brokenByLearners(Notebooks.of(cells), LIMIT))
                .singleElement()
                .asString()
                .startsWith("cell 1, line 1: without this answer no check is reached")
                .contains("cannot find symbol");
    }

    private static Lesson exercise(String check) {
        JsonArray cells = new JsonArray();
        cells.add(Notebooks.code("int mine = 0;"));
        cells.add(Notebooks.code("mine = 4;", LessonCell.ANSWER));
        cells.add(Notebooks.code(check));
        return Notebooks.of(cells);
    }

    private static List<Integer> rules(JsonObject notebook) {
        return LessonRules.broken(Lesson.parse("x", notebook.toString())).stream()
                .map(Violation::rule)
                .toList();
    }
}
