package org.draftingmaths.lessons.kernel;

import io.github.spencerpark.jupyter.channels.JupyterConnection;
import io.github.spencerpark.jupyter.kernel.KernelConnectionProperties;
import java.io.File;
import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.logging.Level;
import java.util.logging.Logger;
import java.util.stream.Stream;

/**
 * The program that Jupyter starts when a notebook asks for the kernel {@code java} and the kernelspec of this project
 * answers. It is not IJava; it speaks the same names.
 */
public final class Launcher {
    private static final List<String> CLASS_PATH_VARIABLES = List.of("IJAVA_CLASSPATH", "JJAVA_CLASSPATH");
    private static final Logger ROOT = Logger.getLogger("");

    private Launcher() {}

    /**
     * Serves one notebook until Jupyter asks to shut down.
     *
     * @param arguments the path of the connection file, and nothing else
     * @throws IOException if a file cannot be read
     * @throws GeneralSecurityException if the connection file asks for a signature this JVM does not know
     */
    public static void main(String[] arguments) throws IOException, GeneralSecurityException {
        if (arguments.length != 1) {
            throw new IllegalArgumentException(
                    "expected one argument, the connection file that Jupyter writes, but got " + arguments.length);
        }
        // The protocol's library tells each message otherwise.
        ROOT.setLevel(Level.WARNING);
        String connectionFile = Files.readString(Path.of(arguments[0]));
        JupyterConnection connection = new JupyterConnection(KernelConnectionProperties.parse(connectionFile));
        JupyterKernel kernel = new JupyterKernel(new CellEngine(classPath(System.getenv())));
        kernel.becomeHandlerForConnection(connection);
        connection.connect();
        connection.waitUntilClose();
        // A thread that a cell started must not keep the process.
        System.exit(0);
    }

    /**
     * The class path that IJava or its successor would be given, each path once. The last part of an entry may be a
     * pattern such as {@code *.jar}.
     */
    static List<Path> classPath(Map<String, String> environment) throws IOException {
        List<Path> paths = new ArrayList<>();
        for (String variable : CLASS_PATH_VARIABLES) {
            for (String entry : environment.getOrDefault(variable, "").split(File.pathSeparator, -1)) {
                paths.addAll(expand(entry));
            }
        }
        return paths.stream().distinct().toList();
    }

    private static List<Path> expand(String entry) throws IOException {
        if (entry.isBlank()) {
            return List.of();
        }
        File file = new File(entry);
        if (!file.getName().contains("*")) {
            return List.of(file.toPath());
        }
        Path folder = Path.of(file.getParent() == null ? "" : file.getParent());
        List<Path> found = new ArrayList<>();
        try (DirectoryStream<Path> entries = Files.newDirectoryStream(folder, file.getName())) {
            entries.forEach(found::add);
        }
        // A folder lists its files in any order.
        return Stream.of(found.toArray(Path[]::new)).sorted().toList();
    }
}
