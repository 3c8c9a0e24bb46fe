package org.draftingmaths.lessons.kernel;

import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import jdk.jshell.DeclarationSnippet;
import jdk.jshell.Diag;
import jdk.jshell.EvalException;
import jdk.jshell.JShell;
import jdk.jshell.JShellException;
import jdk.jshell.Snippet;
import jdk.jshell.Snippet.Status;
import jdk.jshell.SnippetEvent;
import jdk.jshell.SourceCodeAnalysis;
import jdk.jshell.SourceCodeAnalysis.Suggestion;
import jdk.jshell.UnresolvedReferenceException;

/**
 * Runs the cells of one notebook, in this JVM, with what earlier cells declared.
 *
 * <p>Cells see what is on the class path of the JVM, {@code java.util} and its like already imported, and
 * {@link Notebook#render} and {@link Notebook#display}. Not imported, because no Java kernel does:
 * {@code java.util.stream}, {@code java.util.function}, {@code java.nio.file}. A name that is still unknown at the end of
 * its cell is an error.
 *
 * <pre>{@code
 * try (CellEngine engine = new CellEngine(List.of())) {
 *     engine.run(1, "int a = 6;", output);
 *     engine.run(2, "a * 7", output); // 42, an Integer
 * }
 * }</pre>
 *
 * <p>While a cell runs, {@code System.out} and {@code System.err} of the whole JVM lead to its output: one engine at a
 * time.
 */
public final class CellEngine implements AutoCloseable {
    private static final List<String> IMPORTS = List.of(
            "import java.io.*;",
            "import java.math.*;",
            "import java.net.*;",
            "import java.util.*;",
            "import java.util.concurrent.*;",
            "import java.util.prefs.*;",
            "import java.util.regex.*;",
            "import static org.draftingmaths.lessons.kernel.Notebook.display;",
            "import static org.draftingmaths.lessons.kernel.Notebook.render;");
    private static final String CLASS_PATH_LINE = "%classpath ";
    private static final int INDEX_POLL_MILLIS = 10;

    private final CellControl control = new CellControl();
    private final JShell shell;
    private final SourceCodeAnalysis analysis;
    private final CellSplitter splitter;
    private final Map<String, Place> places = new HashMap<>();

    /** Where a snippet came from. */
    private record Place(Cell cell, int offset) {
        CellException error(int line, String message) {
            return cell.error(cell.startOfLine(offset, line), message);
        }
    }

    /**
     * An engine in which nothing has run.
     *
     * @param classPath jars and folders to see beyond the class path of the JVM
     */
    public CellEngine(List<Path> classPath) {
        shell = JShell.builder().executionEngine(control.provider(), Map.of()).build();
        // Before the analysis exists: it indexes the class path in the background, and a jar added meanwhile can get
        // lost.
        classPath.forEach(path -> shell.addToClasspath(path.toString()));
        analysis = shell.sourceCodeAnalysis();
        splitter = new CellSplitter(analysis);
        IMPORTS.forEach(shell::eval);
    }

    /**
     * Runs one cell.
     *
     * @param number of the cell, for messages
     * @param source the text of the cell
     * @param output takes what the cell prints and displays
     * @return the value of the cell's last expression; null when it ends in something else, or in null
     * @throws CellException if the cell does not compile, throws, names something unknown, or is interrupted
     */
    public Object run(int number, String source, CellOutput output) throws CellException {
        control.begin();
        PrintStream out = System.out;
        PrintStream err = System.err;
        Notebook.bind(output);
        try (PrintStream printed = stream(output::print);
                PrintStream complained = stream(output::printError)) {
            System.setOut(printed);
            System.setErr(complained);
            return runFragments(new Cell(number, source));
        } finally {
            System.setOut(out);
            System.setErr(err);
            Notebook.release();
        }
    }

    /** Ends the running cell, an endless loop too; to be called from another thread. */
    public void interrupt() {
        control.requestStop();
        shell.stop();
    }

    /**
     * The parts in which a cell would be evaluated.
     *
     * @param source the text of a cell
     * @return its parts, in order, comments and blanks at the end left out
     */
    public List<Fragment> split(String source) {
        return splitter.split(source);
    }

    /**
     * The types that a snippet of Java declares, without running it.
     *
     * @param snippet the source of one fragment
     * @return simple names
     */
    public List<String> declaredTypes(String snippet) {
        return analysis.sourceToSnippets(snippet).stream()
                .filter(s -> s.kind() == Snippet.Kind.TYPE_DECL)
                .map(s -> ((DeclarationSnippet) s).name())
                .toList();
    }

    /**
     * What could stand at a place of a cell.
     *
     * @param source the text of the cell
     * @param cursor an offset in it
     * @return possible continuations, each in place of the text from the start to the cursor
     */
    public Completions complete(String source, int cursor) {
        List<Fragment> before = split(source.substring(0, cursor));
        int offset = before.isEmpty() ? cursor : before.get(before.size() - 1).offset();
        int[] anchor = {0};
        List<String> continuations =
                analysis.completionSuggestions(source.substring(offset, cursor), cursor - offset, anchor).stream()
                        .map(Suggestion::continuation)
                        .distinct()
                        .toList();
        return new Completions(continuations, offset + anchor[0]);
    }

    /**
     * What could stand at a place of a cell.
     *
     * @param continuations texts to choose from
     * @param start the offset from which one of them replaces the text
     */
    public record Completions(List<String> continuations, int start) {}

    /** Forgets everything that was declared. */
    @Override
    public void close() {
        shell.close();
    }

    private Object runFragments(Cell cell) throws CellException {
        Object value = null;
        Set<Snippet> touched = new LinkedHashSet<>();
        for (Fragment fragment : split(cell.source())) {
            value = null;
            if (fragment.kernelLine()) {
                obey(cell, fragment);
            } else {
                value = evaluate(new Place(cell, fragment.offset()), fragment.source(), touched);
            }
        }
        for (Snippet snippet : touched) {
            requireResolved(snippet);
        }
        return value;
    }

    private void obey(Cell cell, Fragment line) throws CellException {
        if (!line.source().startsWith(CLASS_PATH_LINE)) {
            throw cell.error(line.offset(), "only %classpath may be asked of the kernel, and not: " + line.source());
        }
        Path path = Path.of(line.source().substring(CLASS_PATH_LINE.length()).strip());
        if (!Files.exists(path)) {
            throw cell.error(line.offset(), "no such file: " + path);
        }
        awaitIndex();
        shell.addToClasspath(path.toString());
    }

    /** Waits until no indexing of the class path is under way, in which an added jar could get lost. */
    private void awaitIndex() {
        String anyName = "String";
        while (!analysis.listQualifiedNames(anyName, anyName.length()).isUpToDate()) {
            try {
                Thread.sleep(INDEX_POLL_MILLIS);
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
                return;
            }
        }
    }

    private Object evaluate(Place place, String source, Set<Snippet> touched) throws CellException {
        if (control.stopRequested()) {
            throw place.error(1, "interrupted");
        }
        Object value = null;
        for (SnippetEvent event : shell.eval(source)) {
            touched.add(event.snippet());
            if (event.causeSnippet() == null) {
                places.put(event.snippet().id(), place);
                value = yieldsValue(event.snippet()) ? control.takeValue() : null;
            }
            requireGood(event, place);
        }
        // A stopped snippet looks like one that ended well.
        if (control.stopRequested()) {
            throw place.error(1, "interrupted");
        }
        return value;
    }

    /** As on the other Java kernels, a declaration or an assignment shows nothing. */
    private static boolean yieldsValue(Snippet snippet) {
        return switch (snippet.subKind()) {
            case VAR_VALUE_SUBKIND, TEMP_VAR_EXPRESSION_SUBKIND, OTHER_EXPRESSION_SUBKIND -> true;
            default -> false;
        };
    }

    private void requireGood(SnippetEvent event, Place place) throws CellException {
        if (event.status() == Status.REJECTED) {
            throw rejection(event.snippet(), place);
        }
        if (event.exception() != null) {
            throw failure(event.exception(), place);
        }
    }

    private CellException rejection(Snippet snippet, Place place) {
        Diag first =
                shell.diagnostics(snippet).filter(Diag::isError).findFirst().orElse(null);
        if (first == null) {
            return place.error(1, "not valid Java");
        }
        int offset = place.offset() + (int) Math.max(0, first.getPosition());
        return place.cell().error(offset, first.getMessage(Locale.ROOT).strip());
    }

    private CellException failure(JShellException thrown, Place place) {
        // A set: a method that calls itself without end has a thousand callers at one place.
        Set<String> callers = new LinkedHashSet<>();
        Place deepest = null;
        int line = 1;
        for (StackTraceElement frame : thrown.getStackTrace()) {
            Place called = places.get(snippetOf(frame));
            if (called != null && deepest == null) {
                deepest = called;
                line = frame.getLineNumber();
            } else if (called != null) {
                Cell cell = called.cell();
                callers.add(cell.place(cell.startOfLine(called.offset(), frame.getLineNumber())));
            }
        }
        String calls = callers.stream().map(c -> " (called from " + c + ")").collect(Collectors.joining());
        String message = describe(thrown) + calls;
        CellException error = deepest == null ? place.error(1, message) : deepest.error(line, message);
        return thrown instanceof EvalException ? error.asThrown() : error;
    }

    /** JShell names the file of a frame in a snippet by a hash sign and the snippet's id. */
    private static String snippetOf(StackTraceElement frame) {
        String file = frame.getFileName();
        return file != null && file.startsWith("#") ? file.substring(1) : "";
    }

    private String describe(Throwable thrown) {
        if (thrown instanceof UnresolvedReferenceException unresolved) {
            return unresolvedNames(unresolved.getSnippet());
        }
        String name = thrown instanceof EvalException e
                ? e.getExceptionClassName()
                : thrown.getClass().getName();
        String message = thrown.getMessage() == null ? name : name + ": " + thrown.getMessage();
        return thrown.getCause() == null ? message : message + "; caused by " + describe(thrown.getCause());
    }

    private void requireResolved(Snippet snippet) throws CellException {
        Status status = shell.status(snippet);
        if (status == Status.RECOVERABLE_DEFINED || status == Status.RECOVERABLE_NOT_DEFINED) {
            throw places.get(snippet.id()).error(1, unresolvedNames((DeclarationSnippet) snippet));
        }
    }

    private String unresolvedNames(DeclarationSnippet snippet) {
        return snippet.name() + " needs what is not declared: "
                + shell.unresolvedDependencies(snippet).sorted().collect(Collectors.joining(", "));
    }

    private static PrintStream stream(Consumer<String> sink) {
        return new PrintStream(new Forwarding(sink), true, StandardCharsets.UTF_8);
    }

    /** Hands on what was written at each flush, never half a character: the print stream above writes whole ones. */
    private static final class Forwarding extends OutputStream {
        private final Consumer<String> sink;

        Forwarding(Consumer<String> sink) {
            this.sink = sink;
        }

        @Override
        public void write(int b) {
            write(new byte[] {(byte) b}, 0, 1);
        }

        @Override
        public void write(byte[] bytes, int offset, int length) {
            if (length > 0) {
                sink.accept(new String(bytes, offset, length, StandardCharsets.UTF_8));
            }
        }
    }
}
