package org.draftingmaths.lessons.runner;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import com.google.gson.JsonPrimitive;
import java.util.List;

/** Small lessons for tests. */
final class Notebooks {
    private Notebooks() {}

    /** A lesson of code cells without tags. */
    static Lesson of(String... sources) {
        JsonArray cells = new JsonArray();
        for (String source : sources) {
            cells.add(code(source));
        }
        return of(cells);
    }

    static Lesson of(JsonArray cells) {
        JsonObject kernel = new JsonObject();
        kernel.addProperty("name", "java");
        kernel.addProperty("language", "java");
        kernel.addProperty("display_name", "Java");
        JsonObject metadata = new JsonObject();
        metadata.add("kernelspec", kernel);
        JsonObject notebook = new JsonObject();
        notebook.add("cells", cells);
        notebook.add("metadata", metadata);
        notebook.addProperty("nbformat", 4);
        notebook.addProperty("nbformat_minor", 4);
        return Lesson.parse("small.ipynb", notebook.toString());
    }

    static JsonObject code(String source, String... tags) {
        JsonObject cell = cell("code", source, tags);
        cell.add("outputs", new JsonArray());
        return cell;
    }

    static JsonObject prose(String source, String... tags) {
        return cell("markdown", source, tags);
    }

    private static JsonObject cell(String type, String source, String... tags) {
        JsonArray names = new JsonArray();
        List.of(tags).forEach(names::add);
        JsonObject metadata = new JsonObject();
        metadata.add("tags", names);
        JsonObject cell = new JsonObject();
        cell.addProperty("cell_type", type);
        cell.add("metadata", metadata);
        cell.add("source", new JsonPrimitive(source));
        return cell;
    }
}
