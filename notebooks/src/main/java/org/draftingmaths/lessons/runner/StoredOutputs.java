package org.draftingmaths.lessons.runner;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import org.draftingmaths.lessons.kernel.CellOutput;
import org.draftingmaths.lessons.kernel.Rendering;

/** Collects what one cell puts out as nbformat stores it. */
final class StoredOutputs implements CellOutput {
    private final JsonArray outputs = new JsonArray();
    private final StringBuilder text = new StringBuilder();
    private String stream = "";

    @Override
    public synchronized void print(String printed) {
        append("stdout", printed);
    }

    @Override
    public synchronized void printError(String printed) {
        append("stderr", printed);
    }

    @Override
    public synchronized void show(Rendering shown) {
        endStream();
        outputs.add(shown("display_data", shown));
    }

    /** All outputs of the cell, its value, when it has one, last. */
    synchronized JsonArray end(Object value, int number) {
        endStream();
        if (value != null) {
            JsonObject result = shown("execute_result", Rendering.of(value));
            result.addProperty("execution_count", number);
            outputs.add(result);
        }
        return outputs;
    }

    private void append(String name, String printed) {
        if (!stream.equals(name)) {
            endStream();
            stream = name;
        }
        text.append(printed);
    }

    private void endStream() {
        if (!text.isEmpty()) {
            JsonObject output = new JsonObject();
            output.addProperty("output_type", "stream");
            output.addProperty("name", stream);
            output.add("text", Lesson.lines(text.toString()));
            outputs.add(output);
        }
        text.setLength(0);
        stream = "";
    }

    private static JsonObject shown(String kind, Rendering rendering) {
        JsonObject data = new JsonObject();
        rendering.data().forEach((type, content) -> data.add(type, Lesson.lines(content)));
        JsonObject output = new JsonObject();
        output.addProperty("output_type", kind);
        output.add("data", data);
        output.add("metadata", new JsonObject());
        return output;
    }
}
