package org.draftingmaths.exchange;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonFactoryBuilder;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Reads JSON with Jackson into values that know their place: strictly as RFC 8259 has it, no name twice in an object, nothing
 * after the end.
 */
final class JsonText {

    private static final int LONGEST_NAME = 1_000;
    private static final int LONGEST_TEXT = 10_000;
    private static final int LONGEST_NUMBER = 1_000;

    private final Source source;
    private final JsonParser parser;

    private JsonText(Source source, JsonParser parser) {
        this.source = source;
        this.parser = parser;
    }

    static At read(Source source) {
        try (JsonParser parser = factory(source.limits()).createParser(source.bytes())) {
            return At.root(source, new JsonText(source, parser).whole());
        } catch (IOException broken) {
            throw new FileException(source.name(), "", String.valueOf(broken.getMessage()), broken);
        }
    }

    private Json whole() throws IOException {
        try {
            return document();
        } catch (JsonProcessingException broken) {
            JsonLocation at = broken.getLocation() == null ? parser.currentLocation() : broken.getLocation();
            throw new FileException(source.name(), place(at), firstLine(broken.getOriginalMessage()), broken);
        }
    }

    private static JsonFactory factory(Limits limits) {
        return new JsonFactoryBuilder()
                .streamReadConstraints(StreamReadConstraints.builder()
                        .maxNestingDepth(limits.depth())
                        .maxNameLength(LONGEST_NAME)
                        .maxStringLength(LONGEST_TEXT)
                        .maxNumberLength(LONGEST_NUMBER)
                        .build())
                .build();
    }

    private static String place(JsonLocation at) {
        return "line " + at.getLineNr() + ", column " + at.getColumnNr();
    }

    private static String firstLine(String message) {
        return message.lines().findFirst().orElse("it is not JSON");
    }

    private Json document() throws IOException {
        if (parser.nextToken() == null) {
            throw source.refused("", "the file is empty");
        }
        Json whole = value();
        if (parser.nextToken() != null) {
            throw refused("there is more after the end of the document");
        }
        return whole;
    }

    /** As deep as Jackson lets it: the limit of depth is reached long before the stack's. */
    private Json value() throws IOException {
        source.count(() -> place(parser.currentTokenLocation()));
        JsonLocation at = parser.currentTokenLocation();
        int line = at.getLineNr();
        int column = at.getColumnNr();
        return switch (parser.currentToken()) {
            case START_OBJECT -> new Json.Members(members(), line, column);
            case START_ARRAY -> new Json.Items(items(), line, column);
            case VALUE_STRING -> new Json.Text(parser.getText(), line, column);
            case VALUE_NUMBER_INT -> new Json.Figure(number(), true, line, column);
            case VALUE_NUMBER_FLOAT -> new Json.Figure(number(), false, line, column);
            case VALUE_TRUE -> new Json.Flag(true, line, column);
            case VALUE_FALSE -> new Json.Flag(false, line, column);
            case VALUE_NULL -> new Json.Nothing(line, column);
            default -> throw refused("it is not JSON: " + parser.currentToken());
        };
    }

    /** The double nearest to what is written; Jackson takes {@code -0} for the integer 0. */
    private double number() throws IOException {
        double value = Double.parseDouble(parser.getText());
        if (!Double.isFinite(value)) {
            throw refused("[" + parser.getText() + "] is too large for a number");
        }
        return value;
    }

    private Map<String, Json> members() throws IOException {
        Map<String, Json> members = new LinkedHashMap<>();
        while (parser.nextToken() != JsonToken.END_OBJECT) {
            String name = parser.currentName();
            if (members.containsKey(name)) {
                throw refused("the field '" + name + "' stands twice");
            }
            parser.nextToken();
            members.put(name, value());
        }
        return members;
    }

    private List<Json> items() throws IOException {
        List<Json> items = new ArrayList<>();
        while (parser.nextToken() != JsonToken.END_ARRAY) {
            items.add(value());
        }
        return items;
    }

    private FileException refused(String reason) {
        return source.refused(place(parser.currentTokenLocation()), reason);
    }
}
