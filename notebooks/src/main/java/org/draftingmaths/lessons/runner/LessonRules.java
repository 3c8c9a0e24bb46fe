package org.draftingmaths.lessons.runner;

import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.reflect.Modifier;
import java.net.URI;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.draftingmaths.lessons.kernel.CellEngine;
import org.draftingmaths.lessons.kernel.CellException;
import org.draftingmaths.lessons.kernel.Fragment;

/**
 * What a lesson must keep so that it runs unchanged on IJava 1.3.0, on its successor and on the launcher of this project.
 *
 * <ol>
 *   <li>The format is nbformat 4, the kernelspec {@code {name: java, language: java, display_name: Java}}.
 *   <li>The class path comes from outside. The one line that a cell may address to the kernel is
 *       {@code %classpath path/to/x.jar}, with a relative path.
 *   <li>A picture is the last expression, {@code render(svg, "image/svg+xml", "text/html")}: other kernels drop a
 *       {@code render} elsewhere, an HTML export empties a bare SVG, and a cell that ends in {@code display(...)} prints
 *       a random identifier.
 *   <li>{@code java.util.stream}, {@code java.util.function} and {@code java.nio.file} are imported by the lesson.
 *   <li>No sealed types and no types that refer to each other in one cell: they fail on IJava 1.3.0.
 *   <li>Nothing prints as an address, as an array does; no method names what does not exist, which other kernels accept
 *       and let fail at the call. Running the lesson tells both.
 *   <li>A check is loud by itself, because "run all" goes on after a failing cell: no {@code assert} (assertions are off),
 *       no empty {@code catch}, no tag that lets a cell throw; and a check throws as long as any one answer is missing, instead of a
 *       cell that does not compile.
 *   <li>No line of a text block starts with a per cent sign: a kernel would take it for its own.
 * </ol>
 */
public final class LessonRules {
    private static final Pattern CLASS_PATH_LINE = Pattern.compile("%classpath [^/\\s*][^\\s*]*\\.jar");
    private static final Pattern KERNEL_SIGN = Pattern.compile("(?m)^[ \\t]*%");
    private static final Pattern BARE_SVG = Pattern.compile("\"image/svg\\+xml\"(?!\\s*,\\s*\"text/html\")");
    private static final Pattern DISPLAY = Pattern.compile("display\\s*\\(");
    private static final Pattern RENDER = Pattern.compile("render\\s*\\(");
    private static final Pattern IMPORT = Pattern.compile("import\\s+(?:static\\s+)?([\\w.]+)\\.(\\*|\\w+)\\s*;");
    private static final Pattern NAME = Pattern.compile("(?<![\\w.$])[A-Z]\\w*");
    private static final Pattern SEALED =
            Pattern.compile("(?<![\\w.])(?:sealed\\s+(?:[a-z]+\\s+)*(?:class|interface)|permits\\s+[A-Z])");
    private static final Pattern ADDRESS =
            Pattern.compile("(?:\\[+(?:[ZBCSIJFD]|L[\\w.$]+;)|\\b[\\w$]+(?:\\.[\\w$]+)*)@[0-9a-f]{5,8}\\b");
    private static final Pattern QUIET = Pattern.compile("(?<![\\w.])assert\\s|catch\\s*\\([^)]*\\)\\s*\\{\\s*\\}");
    private static final List<String> PACKAGES = List.of("java.util.stream", "java.util.function", "java.nio.file");
    private static final Map<String, String> PACKAGE_OF = packageOfPublicTypes();

    private LessonRules() {}

    /**
     * What can be told from the text of a lesson: all rules but 6 and the last half of 7.
     *
     * @param lesson to look at
     * @return what it breaks, in the order of the cells
     */
    public static List<Violation> broken(Lesson lesson) {
        List<Violation> found = new ArrayList<>(formatOf(lesson.notebook()));
        Set<String> imported = new HashSet<>();
        try (CellEngine engine = new CellEngine(List.of())) {
            for (LessonCell cell : lesson.cells()) {
                if (cell.isCode()) {
                    new CellCheck(cell, engine, found).check(imported);
                }
            }
        }
        return List.copyOf(found);
    }

    /**
     * What can be told from the outputs of a lesson: rule 6.
     *
     * @param run a lesson that {@link LessonRunner} has run
     * @return what it breaks
     */
    public static List<Violation> brokenByOutputs(Lesson run) {
        List<Violation> found = new ArrayList<>();
        int number = 0;
        for (JsonElement element : run.notebook().getAsJsonArray("cells")) {
            JsonElement outputs = element.getAsJsonObject().get("outputs");
            number += outputs == null ? 0 : 1;
            Matcher address = ADDRESS.matcher(String.valueOf(outputs));
            if (address.find()) {
                found.add(new Violation(6, number, 1, "prints as an address: " + address.group()));
            }
        }
        return found;
    }

    /**
     * Whether the checks of a lesson see that an answer is missing: the last half of rule 7. Each answer is left out alone,
     * because a lesson stops at its first failure and would never come to its second check.
     *
     * @param lesson with answers in it
     * @param limit for running it without one of them
     * @return what it breaks; nothing for a lesson without answers
     */
    public static List<Violation> brokenByLearners(Lesson lesson, Duration limit) {
        List<Violation> found = new ArrayList<>();
        for (LessonCell cell : lesson.cells()) {
            if (cell.isCode() && cell.isAnswer()) {
                found.addAll(brokenWithoutAnswer(lesson, cell.number(), limit));
            }
        }
        return List.copyOf(found);
    }

    private static List<Violation> brokenWithoutAnswer(Lesson lesson, int number, Duration limit) {
        try {
            LessonRunner.run(lesson.withoutAnswer(number), limit);
            return List.of(new Violation(7, number, 1, "no check misses this answer"));
        } catch (CellException e) {
            String message = "without this answer no check is reached; declare its names in a cell before: ";
            return e.isThrown() ? List.of() : List.of(new Violation(7, number, 1, message + e.getMessage()));
        }
    }

    private static List<Violation> formatOf(JsonObject notebook) {
        JsonObject kernel = new JsonObject();
        kernel.addProperty("name", "java");
        kernel.addProperty("language", "java");
        kernel.addProperty("display_name", "Java");
        List<Violation> found = new ArrayList<>();
        if (notebook.get("nbformat").getAsInt() != 4) {
            found.add(new Violation(1, 0, 0, "nbformat is " + notebook.get("nbformat") + ", not 4"));
        }
        JsonElement given = notebook.getAsJsonObject("metadata").get("kernelspec");
        if (!kernel.equals(given)) {
            found.add(new Violation(1, 0, 0, "the kernelspec is " + given + ", not " + kernel));
        }
        return found;
    }

    private static Map<String, String> packageOfPublicTypes() {
        Map<String, String> packages = new HashMap<>();
        for (String name : PACKAGES) {
            Path folder = FileSystems.getFileSystem(URI.create("jrt:/"))
                    .getPath("modules", "java.base")
                    .resolve(name.replace('.', '/'));
            try (Stream<Path> files = Files.list(folder)) {
                files.map(f -> f.getFileName().toString())
                        .filter(f -> f.endsWith(".class") && !f.contains("$") && !f.contains("-"))
                        .map(f -> f.substring(0, f.length() - ".class".length()))
                        .filter(simple -> isPublic(name + "." + simple))
                        .forEach(simple -> packages.put(simple, name));
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
        return packages;
    }

    private static boolean isPublic(String type) {
        try {
            return Modifier.isPublic(Class.forName(type, false, null).getModifiers());
        } catch (ClassNotFoundException e) {
            throw new IllegalStateException("the run-time image lists a class that it does not have", e);
        }
    }

    /** Rules 2 to 5, 7 and 8 for one cell. */
    private static final class CellCheck {
        private final LessonCell cell;
        private final String code;
        private final String blocks;
        private final List<Fragment> fragments;
        private final CellEngine engine;
        private final List<Violation> found;

        CellCheck(LessonCell cell, CellEngine engine, List<Violation> found) {
            this.cell = cell;
            this.code = JavaText.codeOnly(cell.source());
            this.blocks = JavaText.textBlocksOnly(cell.source());
            this.engine = engine;
            this.fragments = engine.split(cell.source());
            this.found = found;
        }

        void check(Set<String> imported) {
            checkKernelLines();
            checkPictures();
            checkImports(imported);
            checkTypes();
            checkLoudness();
        }

        private void report(int rule, int offset, String what) {
            int line = 1
                    + (int) cell.source()
                            .substring(0, offset)
                            .chars()
                            .filter(c -> c == '\n')
                            .count();
            found.add(new Violation(rule, cell.number(), line, what));
        }

        private void checkKernelLines() {
            for (Matcher sign = KERNEL_SIGN.matcher(blocks); sign.find(); ) {
                report(8, sign.end(), "a line of a text block starts with %");
            }
            for (Fragment line : fragments) {
                boolean allowed = CLASS_PATH_LINE.matcher(line.source()).matches();
                boolean inBlock = line.kernelLine()
                        && blocks.startsWith("%", cell.source().indexOf('%', line.offset()));
                if (line.kernelLine() && !allowed && !inBlock) {
                    report(
                            2,
                            line.offset(),
                            "only %classpath path/to/x.jar may be asked of the kernel: " + line.source());
                }
            }
        }

        private void checkPictures() {
            for (Matcher svg = BARE_SVG.matcher(cell.source()); svg.find(); ) {
                report(3, svg.start(), "offer a picture as \"image/svg+xml\", \"text/html\"");
            }
            for (int i = 0; i < fragments.size(); i++) {
                Fragment fragment = fragments.get(i);
                boolean last = i == fragments.size() - 1;
                String text = codeOf(fragment).strip();
                if (last && DISPLAY.matcher(text).lookingAt()) {
                    report(3, fragment.offset(), "a cell must not end in display: end in render");
                }
                if (!last && RENDER.matcher(text).lookingAt()) {
                    report(3, fragment.offset(), "a render that is not the last expression shows nothing");
                }
            }
        }

        private void checkImports(Set<String> imported) {
            for (Fragment fragment : fragments) {
                String text = codeOf(fragment);
                Matcher statement = IMPORT.matcher(text.strip());
                if (statement.matches()) {
                    imported.add(statement.group(1) + "." + statement.group(2));
                    continue;
                }
                imported.addAll(engine.declaredTypes(fragment.kernelLine() ? "" : fragment.source()));
                for (Matcher name = NAME.matcher(text); name.find(); ) {
                    checkName(name.group(), fragment.offset() + name.start(), imported);
                }
            }
        }

        private void checkName(String name, int offset, Set<String> imported) {
            String home = PACKAGE_OF.get(name);
            boolean known =
                    imported.contains(name) || imported.contains(home + ".*") || imported.contains(home + "." + name);
            if (home != null && !known) {
                report(4, offset, name + " needs import " + home + ".*;");
            }
        }

        private void checkTypes() {
            for (Matcher sealed = SEALED.matcher(code); sealed.find(); ) {
                report(5, sealed.start(), "a sealed type belongs into the library");
            }
            Map<String, Fragment> types = new LinkedHashMap<>();
            for (Fragment fragment : fragments) {
                if (!fragment.kernelLine()) {
                    engine.declaredTypes(fragment.source()).forEach(name -> types.put(name, fragment));
                }
            }
            for (Map.Entry<String, Fragment> type : types.entrySet()) {
                if (reaches(type.getKey(), type.getKey(), types, new HashSet<>())) {
                    report(
                            5,
                            type.getValue().offset(),
                            type.getKey() + " and another type of this cell refer to each other");
                }
            }
        }

        private boolean reaches(String from, String goal, Map<String, Fragment> types, Set<String> seen) {
            for (String other : types.keySet()) {
                boolean named = !other.equals(from)
                        && Pattern.compile("(?<![\\w.])" + other + "\\b")
                                .matcher(codeOf(types.get(from)))
                                .find();
                if (named && (other.equals(goal) || (seen.add(other) && reaches(other, goal, types, seen)))) {
                    return true;
                }
            }
            return false;
        }

        private void checkLoudness() {
            for (Matcher quiet = QUIET.matcher(code); quiet.find(); ) {
                report(7, quiet.start(), "a check that nobody hears: throw instead");
            }
            if (cell.tags().contains("raises-exception")) {
                report(7, 0, "the tag raises-exception hides a failure");
            }
        }

        private String codeOf(Fragment fragment) {
            return JavaText.codeOnly(fragment.source());
        }
    }
}
