package org.draftingmaths.lessons;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Every example in the Javadoc compiles. Names that an example takes for granted are fields of the class round it. */
class JavadocExamplesTest {

    private static final Pattern EXAMPLE = Pattern.compile("<pre>\\{@code\\n(.*?)\\}</pre>", Pattern.DOTALL);

    private static final String BEFORE = """
            import java.io.*;
            import java.nio.file.*;
            import java.util.*;
            import org.apache.commons.geometry.euclidean.twod.*;
            import org.draftingmaths.block.*;
            import org.draftingmaths.check.*;
            import org.draftingmaths.suppose.*;
            import org.draftingmaths.contour.*;
            import org.draftingmaths.curve.*;
            import org.draftingmaths.dart.*;
            import org.draftingmaths.exchange.*;
            import org.draftingmaths.finish.*;
            import org.draftingmaths.fullness.*;
            import org.draftingmaths.ledger.*;
            import org.draftingmaths.measure.*;
            import org.draftingmaths.piece.*;
            import org.draftingmaths.seam.*;
            import org.draftingmaths.tables.*;
            import org.draftingmaths.unit.*;

            class ExampleNumber {
                Piece front;
                Piece piece;
                Piece back;
                Piece skirt;
                Draft draft;
                Block block;
                StepSheet steps;
                Path folder;
                Seam seam;
                Measurements body;
                Measurements figure;
                Vector2D a;
                Vector2D b;
                Vector2D c;
                Vector2D d;
                CurvePath outline;
                Curve curve;

                void example() throws Exception {
            """;

    private static List<String> examples() throws IOException {
        List<String> found = new ArrayList<>();
        try (Stream<Path> files = Files.walk(Path.of("..", "library"))) {
            for (Path file : files.filter(path -> path.toString().contains("/src/main/java/"))
                    .filter(path -> path.toString().endsWith(".java"))
                    .sorted()
                    .toList()) {
                Matcher matcher = EXAMPLE.matcher(Files.readString(file));
                while (matcher.find()) {
                    found.add(matcher.group(1).replaceAll("(?m)^\\s*\\* ?", ""));
                }
            }
        }
        return found;
    }

    @Test
    void everyExampleCompiles(@TempDir Path folder) throws IOException {
        List<String> examples = examples();
        assertThat(examples).hasSizeGreaterThan(10);
        List<String> arguments = new ArrayList<>(
                List.of("-proc:none", "-d", folder.toString(), "-cp", System.getProperty("java.class.path")));
        for (int i = 0; i < examples.size(); i++) {
            String source = BEFORE.replace("ExampleNumber", "Example" + i) + examples.get(i) + "    }\n}\n";
            arguments.add(Files.writeString(folder.resolve("Example" + i + ".java"), source)
                    .toString());
        }
        ByteArrayOutputStream said = new ByteArrayOutputStream();
        int result = ToolProvider.getSystemJavaCompiler().run(null, said, said, arguments.toArray(String[]::new));
        assertThat(result).as(said.toString(StandardCharsets.UTF_8)).isZero();
    }
}
