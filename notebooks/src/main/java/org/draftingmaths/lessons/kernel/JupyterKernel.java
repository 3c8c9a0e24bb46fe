package org.draftingmaths.lessons.kernel;

import io.github.spencerpark.jupyter.kernel.BaseKernel;
import io.github.spencerpark.jupyter.kernel.LanguageInfo;
import io.github.spencerpark.jupyter.kernel.ReplacementOptions;
import io.github.spencerpark.jupyter.kernel.display.DisplayData;
import java.util.List;

/** Puts a {@link CellEngine} behind the Jupyter protocol. The only class that knows the protocol's library. */
final class JupyterKernel extends BaseKernel {
    private final CellEngine engine;

    JupyterKernel(CellEngine engine) {
        this.engine = engine;
        // The engine captures the streams itself, and writes to those of the protocol.
        setShouldReplaceStdStreams(false);
    }

    @Override
    public DisplayData eval(String source) throws CellException {
        // The base has already counted this cell.
        int number = executionCount.get() - 1;
        try {
            Object value = engine.run(number, source, new Output());
            return value == null ? null : toDisplayData(Rendering.of(value));
        } catch (StackOverflowError e) {
            // A toString that calls itself would otherwise end the kernel.
            throw new CellException("cell " + number + ": the value's text refers to itself without end");
        }
    }

    private final class Output implements CellOutput {
        @Override
        public void print(String text) {
            getIO().out.print(text);
            getIO().out.flush();
        }

        @Override
        public void printError(String text) {
            getIO().err.print(text);
            getIO().err.flush();
        }

        @Override
        public void show(Rendering shown) {
            display(toDisplayData(shown));
        }
    }

    private static DisplayData toDisplayData(Rendering rendering) {
        DisplayData data = new DisplayData();
        rendering.data().forEach(data::putData);
        return data;
    }

    @Override
    public List<String> formatError(Exception e) {
        String message = e instanceof CellException ? e.getMessage() : e.toString();
        return message.lines().toList();
    }

    @Override
    public ReplacementOptions complete(String source, int cursor) {
        CellEngine.Completions found = engine.complete(source, cursor);
        return new ReplacementOptions(found.continuations(), found.start(), cursor);
    }

    @Override
    public void interrupt() {
        engine.interrupt();
    }

    @Override
    public void onShutdown(boolean restarting) {
        engine.interrupt();
        engine.close();
    }

    @Override
    public String getBanner() {
        return "Java " + Runtime.version() + ", the kernel of Drafting Maths";
    }

    @Override
    public LanguageInfo getLanguageInfo() {
        return new LanguageInfo.Builder("Java")
                .version(Runtime.version().toString())
                .mimetype("text/x-java-source")
                .fileExtension(".jshell")
                .pygments("java")
                .codemirror("text/x-java")
                .build();
    }
}
