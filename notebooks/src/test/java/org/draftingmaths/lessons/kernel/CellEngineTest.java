package org.draftingmaths.lessons.kernel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.entry;

import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@Timeout(60)
class CellEngineTest {
    private final CellEngine engine = new CellEngine(List.of());
    private final Kept output = new Kept();
    private int cells;

    @AfterEach
    void close() {
        engine.close();
    }

    @Test
    void yieldsTheObjectOfTheLastExpression() throws CellException {
        assertThat(run("int a = 6;\na * 7")).isEqualTo(42);
        assertThat(run("List<Integer> kept = new ArrayList<>(List.of(1));\nkept"))
                .isEqualTo(List.of(1));
        Object first = run("kept");
        assertThat(run("kept")).isSameAs(first);
        assertThat(run("\"no quotes\"")).isEqualTo("no quotes");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "  \n",
                "// only a comment",
                "int b = 3;",
                "int b;\nb = 4",
                "int b = 3;\nb;\nint c = 5;",
                "void f() {}",
                "for (int i = 0; i < 3; i++) {}",
                "System.out.println(1)",
                "Object none = null;\nnone"
            })
    void yieldsNothingOtherwise(String source) throws CellException {
        assertThat(run(source)).isNull();
    }

    @Test
    void keepsDeclarationsFromCellToCellAndTakesNewOnes() throws CellException {
        run("record Dart(double intake) {}\ndouble twice(Dart d) { return 2 * d.intake(); }");
        assertThat(run("twice(new Dart(20))")).isEqualTo(40.0);
        run("double twice(Dart d) { return 2 * d.intake() + 1; }");
        assertThat(run("twice(new Dart(20))")).isEqualTo(41.0);
    }

    @Test
    void rendersAndDisplays() throws CellException {
        Object last = run("display(\"seen\");\nrender(\"<svg/>\", \"image/svg+xml\", \"text/html\")");
        assertThat(((Rendering) last).data())
                .containsExactly(entry("image/svg+xml", "<svg/>"), entry("text/html", "<svg/>"));
        assertThat(output.events).containsExactly("shown {text/plain=seen}");
    }

    @Test
    void keepsTheOrderOfWhatIsPrintedAndShown() throws CellException {
        run("System.out.print(\"\u00bd in \u2702\");\ndisplay(1, \"text/x\");\nSystem.err.println(\"late\");");
        assertThat(output.events).containsExactly("printed \u00bd in \u2702", "shown {text/x=1}", "complained late\n");
    }

    @Test
    void givesTheStreamsBackAfterTheCell() {
        PrintStream before = System.out;
        assertThatThrownBy(() -> run("throw new RuntimeException()")).isInstanceOf(CellException.class);
        assertThat(System.out).isSameAs(before);
    }

    @Test
    void tellsWhereAFailureIsAndCarriesNoStackTrace() throws CellException {
        run("int before = 1;");
        CellException e = failure("int one = 1;\n\n  int two = one / 0;\n");
        assertThat(e).hasMessage("""
                cell 2, line 3: java.lang.ArithmeticException: / by zero
                      int two = one / 0;
                      ^""");
        assertThat(e.getStackTrace()).isEmpty();
    }

    @Test
    void tellsTheLineInsideALongerSnippet() {
        assertThat(failure("int x = 0;\nfor (int i = 0; i < 2; i++) {\n    x = 1;\n    x = x / 0;\n}"))
                .hasMessage("""
                cell 1, line 4: java.lang.ArithmeticException: / by zero
                        x = x / 0;
                        ^""");
    }

    @Test
    void tellsWhereAMethodOfAnEarlierCellFailedAndWhoCalledIt() throws CellException {
        run("// divides\nint share(int n) {\n    return 10 / n;\n}");
        assertThat(failure("int ok = 1;\nshare(0)")).hasMessage("""
                cell 1, line 3: java.lang.ArithmeticException: / by zero (called from cell 2, line 2)
                        return 10 / n;
                        ^""");
    }

    @Test
    void tellsEachCallerOnceWhenAMethodCallsItselfWithoutEnd() throws CellException {
        run("int deeper(int n) {\n    return deeper(n + 1);\n}");
        assertThat(failure("deeper(0)")).hasMessage("""
                cell 1, line 2: java.lang.StackOverflowError (called from cell 1, line 2)
                        return deeper(n + 1);
                        ^""");
    }

    @Test
    void tellsCodeThatThrowsFromCodeThatCannotRun() {
        assertThat(failure("int z = 1 / 0;").isThrown()).isTrue();
        assertThat(failure("int z = nothing;").isThrown()).isFalse();
        assertThat(failure("int f() { return nothing(); }\nf()").isThrown()).isFalse();
        output.whenPrinting = engine::interrupt;
        assertThat(failure("System.out.print(\"x\");\nwhile (true) {}").isThrown())
                .isFalse();
    }

    @Test
    void namesTheCauseOfAFailure() {
        assertThat(failure("throw new IllegalStateException(\"outer\", new IllegalArgumentException(\"inner\"));"))
                .hasMessageStartingWith("cell 1, line 1: java.lang.IllegalStateException: outer; caused by"
                        + " java.lang.IllegalArgumentException: inner\n");
    }

    @Test
    void pointsAtWhatDoesNotCompile() {
        assertThat(failure("int a = 1;\nint b = a + \"x\".size();")).hasMessage("""
                cell 1, line 2: cannot find symbol
                  symbol:   method size()
                  location: class java.lang.String
                    int b = a + "x".size();
                                   ^""");
    }

    @Test
    void saysThatACellIsIncomplete() {
        assertThat(failure("int a = 1;\nint f(int x) {\n    return x;\n"))
                .hasMessageStartingWith("cell 1, line 3: reached end of file while parsing\n        return x;\n");
    }

    @Test
    void stopsAtTheFailure() {
        failure("System.out.print(\"a\");\nint z = 1 / 0;\nSystem.out.print(\"b\");");
        assertThat(output.events).containsExactly("printed a");
    }

    @Test
    void takesAForwardReferenceThatTheCellResolves() throws CellException {
        assertThat(run("int outer() { return inner(); }\nint inner() { return 3; }\nouter()"))
                .isEqualTo(3);
    }

    @Test
    void refusesANameThatIsUnknownAtTheEndOfTheCell() {
        assertThat(failure("int fine = 1;\nint outer() {\n    return inner();\n}"))
                .hasMessage("""
                cell 1, line 2: outer needs what is not declared: method inner()
                    int outer() {
                    ^""");
        assertThat(failure("Missing thing;")).hasMessageContaining("thing needs what is not declared: class Missing");
    }

    @Test
    void tellsThatACallCameBeforeItsDeclaration() {
        assertThat(failure("int outer() { return inner(); }\nouter();\nint inner() { return 3; }"))
                .hasMessageContaining("cell 1, line")
                .hasMessageContaining("outer needs what is not declared: method inner()");
    }

    @ParameterizedTest
    @ValueSource(strings = {"while (true) {}", "int spin() { while (true) {} }\nspin()", "Thread.sleep(1_000_000);"})
    void interruptEndsACellThatDoesNotEnd(String source) throws Exception {
        CountDownLatch started = new CountDownLatch(1);
        output.whenPrinting = started::countDown;
        Thread stopper = new Thread(() -> {
            awaitQuietly(started);
            engine.interrupt();
        });
        stopper.start();
        assertThat(failure("System.out.print(\"go\");\n" + source)).hasMessageContaining(": interrupted\n");
        stopper.join();
        assertThat(run("1 + 1")).isEqualTo(2);
    }

    @Test
    void anInterruptBetweenTwoSnippetsIsNotLost() {
        output.whenPrinting = engine::interrupt;
        assertThat(failure("System.out.print(\"x\");\nwhile (true) {}")).hasMessageContaining(": interrupted\n");
    }

    @Test
    void refusesToEndTheProcess() throws CellException {
        assertThat(failure("int a = 1;\nSystem.exit(3);"))
                .hasMessageStartingWith("cell 1, line 2: ")
                .hasMessageContaining("System.exit(3) in a cell would end the kernel");
        run("record Leaver(long big, double d) { void leave() { System.out.flush(); System.exit(4); } }");
        assertThat(failure("new Leaver(1L << 40, 0.1).leave();")).hasMessageContaining("System.exit(4) in a cell");
        run("java.util.function.IntConsumer later;");
        assertThat(failure("later = System::exit;\nlater.accept(5);")).hasMessageContaining("System.exit(5) in a cell");
    }

    @Test
    void importsWhatEveryJavaKernelImportsAndNoMore() throws CellException {
        assertThat(run("List.of(new BigDecimal(\"1\"))")).isNotNull();
        for (String name : List.of("Collectors.toList()", "Function.identity()", "Path.of(\"x\")")) {
            assertThat(failure(name)).hasMessageContaining("cannot find symbol");
        }
    }

    @Test
    void completesTheLastSnippetOfACell() throws CellException {
        run("String seamName = \"side\";");
        CellEngine.Completions found = engine.complete("int a = 1;\nseamN", 16);
        assertThat(found.continuations()).containsExactly("seamName");
        assertThat(found.start()).isEqualTo(11);
    }

    @Test
    void obeysClassPathLinesBetweenSnippets(@TempDir Path folder) throws IOException, CellException {
        Path one = jarWithText(folder.resolve("one.jar"), "one", "Told");
        Path two = jarWithText(folder.resolve("two.jar"), "two", "Retold");
        assertThat(run("%classpath " + one + "\nString s = \"\" + new extra.Told();\n  %classpath " + two
                        + "\ns + new extra.Retold()"))
                .isEqualTo("onetwo");
    }

    @Test
    void seesTheClassPathItIsGiven(@TempDir Path folder) throws IOException, CellException {
        Path jar = jarWithText(folder.resolve("given.jar"), "given", "Told");
        try (CellEngine fresh = new CellEngine(List.of(jar))) {
            assertThat(fresh.run(1, "\"\" + new extra.Told()", output)).isEqualTo("given");
        }
    }

    @Test
    void refusesAMissingJarAndAnyOtherLineForTheKernel() {
        assertThat(failure("int a = 1;\n%classpath nowhere/x.jar"))
                .hasMessageStartingWith("cell 1, line 2: no such file: ");
        for (String line : List.of("%jars x.jar", "%%javascript", "%maven a:b:1", "  %time")) {
            assertThat(failure(line)).hasMessageContaining("only %classpath may be asked of the kernel");
        }
    }

    @Test
    void takesALineThatBeginsWithARemainderForJava() throws CellException {
        assertThat(run("int r = 17\n    % 5;\nr")).isEqualTo(2);
    }

    private Object run(String source) throws CellException {
        return engine.run(++cells, source, output);
    }

    private CellException failure(String source) {
        int number = cells + 1;
        CellException e = catchThrowableOfType(CellException.class, () -> engine.run(number, source, output));
        assertThat(e).as("the cell must fail: %s", source).isNotNull();
        return e;
    }

    private static void awaitQuietly(CountDownLatch latch) {
        try {
            assertThat(latch.await(30, TimeUnit.SECONDS)).isTrue();
        } catch (InterruptedException e) {
            throw new AssertionError(e);
        }
    }

    /** A jar with a class in the package {@code extra} whose text is the given one. */
    private static Path jarWithText(Path jar, String text, String name) throws IOException {
        Path folder = Files.createDirectories(jar.resolveSibling(text).resolve("extra"));
        Path source = folder.resolve(name + ".java");
        Files.writeString(
                source,
                "package extra; public class %s { public String toString() { return \"%s\"; } }".formatted(name, text));
        OutputStream ignored = OutputStream.nullOutputStream();
        assertThat(ToolProvider.getSystemJavaCompiler().run(null, ignored, ignored, source.toString()))
                .isZero();
        try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(jar))) {
            zip.putNextEntry(new ZipEntry("extra/" + name + ".class"));
            zip.write(Files.readAllBytes(folder.resolve(name + ".class")));
        }
        return jar;
    }

    /** What a cell put out, in order; text is joined as long as nothing else comes between. */
    private static final class Kept implements CellOutput {
        final List<String> events = new ArrayList<>();
        Runnable whenPrinting = () -> {};

        @Override
        public void print(String text) {
            add("printed ", text);
            whenPrinting.run();
        }

        @Override
        public void printError(String text) {
            add("complained ", text);
        }

        @Override
        public void show(Rendering shown) {
            events.add("shown " + shown.data());
        }

        private void add(String kind, String text) {
            int last = events.size() - 1;
            if (last >= 0 && events.get(last).startsWith(kind)) {
                events.set(last, events.get(last) + text);
            } else {
                events.add(kind + text);
            }
        }
    }
}
