package org.draftingmaths.lessons;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.tools.JavaCompiler;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Every program in the README compiles as it stands there, and prints what stands beneath it. */
class ReadmeTest {

    private static final Pattern PROGRAM = Pattern.compile(
            "```java\\n(?<code>.*?public class (?<name>\\w+).*?)```\\n\\n```text\\n(?<output>.*?)```", Pattern.DOTALL);

    static Stream<Arguments> programs() throws IOException {
        Matcher found = PROGRAM.matcher(Files.readString(Path.of("..", "README.md")));
        return found.results().map(each -> Arguments.of(each.group(2), each.group(1), each.group(3)));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("programs")
    void printsWhatItSays(String name, String code, String output, @TempDir Path folder) throws Exception {
        Path source = Files.writeString(folder.resolve(name + ".java"), code);
        JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
        ByteArrayOutputStream said = new ByteArrayOutputStream();
        int result = compiler.run(
                null,
                said,
                said,
                "-Xlint:all",
                "-Werror",
                "-proc:none",
                "-cp",
                System.getProperty("java.class.path"),
                source.toString());
        assertThat(result).as("%s compiles: %s", name, said).isZero();
        assertThat(printed(name, folder)).isEqualTo(output);
    }

    private static String printed(String name, Path folder) throws Exception {
        PrintStream screen = System.out;
        ByteArrayOutputStream printed = new ByteArrayOutputStream();
        try (URLClassLoader loader =
                new URLClassLoader(new URL[] {folder.toUri().toURL()})) {
            System.setOut(new PrintStream(printed, true, StandardCharsets.UTF_8));
            loader.loadClass(name).getMethod("main", String[].class).invoke(null, (Object) new String[0]);
        } finally {
            System.setOut(screen);
        }
        return printed.toString(StandardCharsets.UTF_8).replace(System.lineSeparator(), "\n");
    }
}
