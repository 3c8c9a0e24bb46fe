package org.draftingmaths.lessons.runner;

import com.google.gson.Gson;
import com.google.gson.GsonBuilder;
import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonNull;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import com.google.gson.JsonPrimitive;
import com.google.gson.stream.JsonWriter;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import java.util.stream.StreamSupport;

/** A notebook of the format nbformat 4, read from its JSON. Immutable: changes give another lesson. */
public final class Lesson {
    private static final Gson GSON =
            new GsonBuilder().disableHtmlEscaping().serializeNulls().create();
    private static final String PROMPT = "// Your answer:";
    private static final String PROSE_PROMPT = "*Your answer:*";

    private final String name;
    private final JsonObject notebook;

    private Lesson(String name, JsonObject notebook) {
        this.name = name;
        this.notebook = notebook;
    }

    /**
     * Reads a lesson.
     *
     * @param file an {@code .ipynb} file
     * @return the lesson, named after the file
     * @throws IOException if the file cannot be read
     */
    public static Lesson read(Path file) throws IOException {
        return parse(file.getFileName().toString(), Files.readString(file));
    }

    /**
     * Reads a lesson.
     *
     * @param name for messages
     * @param json the text of an {@code .ipynb} file
     * @return the lesson
     */
    public static Lesson parse(String name, String json) {
        return new Lesson(name, JsonParser.parseString(json).getAsJsonObject());
    }

    /** What messages call the lesson. */
    public String name() {
        return name;
    }

    /** The cells in order. */
    public List<LessonCell> cells() {
        List<LessonCell> cells = new ArrayList<>();
        int number = 0;
        for (JsonObject cell : cellsIn(notebook)) {
            number += isCode(cell) ? 1 : 0;
            cells.add(new LessonCell(isCode(cell) ? number : 0, text(cell.get("source")), tags(cell)));
        }
        return cells;
    }

    /** A copy of the notebook's JSON. */
    JsonObject notebook() {
        return notebook.deepCopy();
    }

    /** The learners' copy: cells tagged {@code answer} emptied to a prompt, outputs stripped. */
    public Lesson withoutAnswers() {
        JsonObject copy = notebook.deepCopy();
        for (JsonObject cell : cellsIn(copy)) {
            if (tags(cell).contains(LessonCell.ANSWER)) {
                prompt(cell);
            }
            if (isCode(cell)) {
                cell.add("outputs", new JsonArray());
                cell.add("execution_count", JsonNull.INSTANCE);
            }
        }
        return new Lesson(name, copy);
    }

    /**
     * The lesson as it is when one answer is missing and all others are given.
     *
     * @param number of the code cell
     * @return the lesson with that cell emptied to a prompt
     */
    Lesson withoutAnswer(int number) {
        JsonObject copy = notebook.deepCopy();
        prompt(cellsIn(copy).stream().filter(Lesson::isCode).toList().get(number - 1));
        return new Lesson(name, copy);
    }

    /**
     * The lesson with the given outputs, and without what differs from one Jupyter to the next: metadata other than the
     * kernelspec and the cells' tags.
     *
     * @param outputs nbformat outputs, one array for each code cell
     * @return the lesson as it is committed
     */
    Lesson withOutputs(List<JsonArray> outputs) {
        JsonObject copy = notebook.deepCopy();
        JsonObject metadata = new JsonObject();
        metadata.add("kernelspec", notebook.getAsJsonObject("metadata").get("kernelspec"));
        copy.add("metadata", metadata);
        int number = 0;
        for (JsonObject cell : cellsIn(copy)) {
            keepTagsOnly(cell);
            cell.add("source", lines(text(cell.get("source"))));
            if (isCode(cell)) {
                cell.add("outputs", outputs.get(number++));
                cell.addProperty("execution_count", number);
            }
        }
        return new Lesson(name, copy);
    }

    /** The text of the {@code .ipynb} file, laid out as Jupyter does: keys sorted, one blank a level, a newline at the end. */
    public String json() {
        StringWriter text = new StringWriter();
        JsonWriter writer = new JsonWriter(text); // not closed: a writer into memory holds nothing
        writer.setIndent(" ");
        GSON.toJson(sorted(notebook), writer);
        return text.append('\n').toString();
    }

    /** A text as nbformat lays it out: a list of lines that keep their newlines. */
    static JsonArray lines(String text) {
        JsonArray lines = new JsonArray();
        int from = 0;
        while (from < text.length()) {
            int newline = text.indexOf('\n', from);
            int to = newline < 0 ? text.length() : newline + 1;
            lines.add(text.substring(from, to));
            from = to;
        }
        return lines;
    }

    private static List<JsonObject> cellsIn(JsonObject notebook) {
        return StreamSupport.stream(notebook.getAsJsonArray("cells").spliterator(), false)
                .map(JsonElement::getAsJsonObject)
                .toList();
    }

    private static boolean isCode(JsonObject cell) {
        return cell.get("cell_type").getAsString().equals("code");
    }

    private static void prompt(JsonObject cell) {
        cell.add("source", lines(isCode(cell) ? PROMPT : PROSE_PROMPT));
    }

    private static void keepTagsOnly(JsonObject cell) {
        JsonElement tags = cell.getAsJsonObject("metadata").get("tags");
        JsonObject metadata = new JsonObject();
        if (tags != null) {
            metadata.add("tags", tags);
        }
        cell.add("metadata", metadata);
    }

    private static List<String> tags(JsonObject cell) {
        JsonArray tags = cell.getAsJsonObject("metadata").getAsJsonArray("tags");
        return tags == null ? List.of() : strings(tags);
    }

    /** nbformat allows a text as one string and as a list of lines. */
    private static String text(JsonElement source) {
        return source instanceof JsonPrimitive whole
                ? whole.getAsString()
                : String.join("", strings(source.getAsJsonArray()));
    }

    private static List<String> strings(JsonArray array) {
        return StreamSupport.stream(array.spliterator(), false)
                .map(JsonElement::getAsString)
                .toList();
    }

    private static JsonElement sorted(JsonElement element) {
        if (element instanceof JsonArray array) {
            JsonArray result = new JsonArray();
            array.forEach(e -> result.add(sorted(e)));
            return result;
        }
        if (element instanceof JsonObject object) {
            JsonObject result = new JsonObject();
            new TreeMap<>(object.asMap()).forEach((key, value) -> result.add(key, sorted(value)));
            return result;
        }
        return element;
    }
}
