package org.draftingmaths.lessons.kernel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import io.github.spencerpark.jupyter.kernel.display.DisplayData;
import io.github.spencerpark.jupyter.kernel.display.mime.MIMEType;
import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LauncherTest {
    @Test
    void takesTheClassPathThatTheOtherKernelsWouldTake(@TempDir Path folder) throws IOException {
        for (String name : List.of("b.jar", "a.jar", "notes.txt")) {
            Files.createFile(folder.resolve(name));
        }
        Map<String, String> environment = Map.of(
                "IJAVA_CLASSPATH", "x.jar" + File.pathSeparator + folder + "/*.jar",
                "JJAVA_CLASSPATH", "y.jar" + File.pathSeparator + "x.jar" + File.pathSeparator);
        assertThat(Launcher.classPath(environment))
                .containsExactly(Path.of("x.jar"), folder.resolve("a.jar"), folder.resolve("b.jar"), Path.of("y.jar"));
        assertThat(Launcher.classPath(Map.of())).isEmpty();
    }

    @Test
    void wantsOneConnectionFile() {
        assertThatThrownBy(() -> Launcher.main(new String[0]))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("got 0");
    }

    @Test
    void theKernelspecStartsTheLauncher() throws IOException {
        JsonObject spec = JsonParser.parseString(Files.readString(Path.of("src/main/kernelspec/kernel.json")))
                .getAsJsonObject();
        List<String> command = StreamSupport.stream(spec.getAsJsonArray("argv").spliterator(), false)
                .map(JsonElement::getAsString)
                .toList();
        assertThat(command)
                .startsWith("java")
                .endsWith("-cp", "{resource_dir}/lib/*", Launcher.class.getName(), "{connection_file}");
        assertThat(spec.get("display_name").getAsString()).isEqualTo("Java");
        assertThat(spec.get("language").getAsString()).isEqualTo("java");
        // Otherwise Jupyter would end the whole process to interrupt a cell.
        assertThat(spec.get("interrupt_mode").getAsString()).isEqualTo("message");
    }

    @Test
    void theKernelHandsValuesAndErrorsToTheProtocol() throws Exception {
        try (CellEngine engine = new CellEngine(List.of())) {
            JupyterKernel kernel = new JupyterKernel(engine);
            DisplayData picture = kernel.eval("render(\"<svg/>\", \"image/svg+xml\", \"text/html\")");
            assertThat(picture.getData(MIMEType.IMAGE_SVG)).isEqualTo("<svg/>");
            assertThat(picture.getData(MIMEType.TEXT_HTML)).isEqualTo("<svg/>");
            assertThat(kernel.eval("int a = 1;")).isNull();
            assertThat(kernel.formatError(new CellException("cell 1\n    here\n    ^")))
                    .containsExactly("cell 1", "    here", "    ^");
            assertThatThrownBy(() -> kernel.eval("List<Object> self = new ArrayList<>();\nself.add(self);\n"
                            + "class Loop { public String toString() { return \"\" + this; } }\nnew Loop()"))
                    .isInstanceOf(CellException.class)
                    .hasMessageContaining("refers to itself without end");
        }
    }
}
