package org.draftingmaths.lessons.kernel;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * One content in one or more media types, of which a notebook shows the richest it can.
 *
 * @param data content by media type, in the order in which the types were asked for
 */
public record Rendering(Map<String, String> data) {
    private static final String PLAIN = "text/plain";

    /**
     * Keeps a copy of the map.
     *
     * @throws IllegalArgumentException if there is no content at all
     */
    public Rendering {
        if (data.isEmpty()) {
            throw new IllegalArgumentException("a rendering needs at least one media type");
        }
        data = Collections.unmodifiableMap(new LinkedHashMap<>(data));
    }

    /**
     * The same text under each media type; as plain text when none is given.
     *
     * @param content its {@code toString} is the text
     * @param mediaTypes such as {@code image/svg+xml}
     * @return the rendering
     */
    public static Rendering as(Object content, String... mediaTypes) {
        String text = String.valueOf(content);
        Map<String, String> data = new LinkedHashMap<>();
        for (String type : mediaTypes) {
            data.put(type, text);
        }
        return new Rendering(data.isEmpty() ? Map.of(PLAIN, text) : data);
    }

    /**
     * What a notebook shows for the value of a cell: a rendering as it is, anything else by its {@code toString}.
     *
     * @param value not null
     * @return the rendering
     */
    public static Rendering of(Object value) {
        return value instanceof Rendering rendering ? rendering : as(value);
    }
}
