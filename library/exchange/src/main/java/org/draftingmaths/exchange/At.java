package org.draftingmaths.exchange;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.ledger.DraftingException;

/** A value of a JSON document by the way that leads to it, so that every refusal can say where it stands. */
final class At {

    private final Source source;
    private final At parent;
    private final String key;
    private final Json value;

    private At(Source source, At parent, String key, Json value) {
        this.source = source;
        this.parent = parent;
        this.key = key;
        this.value = value;
    }

    static At root(Source source, Json value) {
        return new At(source, null, "", value);
    }

    /** Line, column, and the JSON pointer of RFC 6901. */
    String place() {
        Deque<String> keys = new ArrayDeque<>();
        for (At at = this; at.parent != null; at = at.parent) {
            keys.push("/" + at.key.replace("~", "~0").replace("/", "~1"));
        }
        String pointer = String.join("", keys);
        return "line " + value.line() + ", column " + value.column() + (pointer.isEmpty() ? "" : ", " + pointer);
    }

    FileException refused(String reason) {
        return source.refused(place(), reason);
    }

    private FileException expected(String what) {
        return refused(what + " is needed here, but there is " + value.words());
    }

    /** Gives a refusal by the library the place of this value. */
    <T> T made(Supplier<T> making) {
        source.requireTime(place());
        try {
            return making.get();
        } catch (FileException placed) {
            throw placed;
        } catch (IllegalArgumentException | DraftingException refusal) {
            throw new FileException(source.name(), place(), refusal.getMessage(), refusal);
        }
    }

    /** Refuses a field that this format does not know: nothing in a file is passed over in silence. */
    At fields(String... known) {
        for (String name : object().members().keySet()) {
            if (!Arrays.asList(known).contains(name)) {
                throw member(name)
                        .refused("there is no field '" + name + "' here; there are " + String.join(", ", known));
            }
        }
        return this;
    }

    private Json.Members object() {
        if (value instanceof Json.Members members) {
            return members;
        }
        throw expected("an object");
    }

    boolean has(String name) {
        return object().members().containsKey(name);
    }

    At member(String name) {
        return optional(name).orElseThrow(() -> refused("the field '" + name + "' is missing"));
    }

    Optional<At> optional(String name) {
        return Optional.ofNullable(object().members().get(name)).map(member -> new At(source, this, name, member));
    }

    List<At> items() {
        if (!(value instanceof Json.Items list)) {
            throw expected("a list");
        }
        List<At> items = new ArrayList<>(list.items().size());
        for (Json item : list.items()) {
            items.add(new At(source, this, String.valueOf(items.size()), item));
        }
        return items;
    }

    /** Each item of a list that may hold no more than the limit of parts. */
    <T> List<T> each(Function<At, T> reading) {
        List<At> items = items();
        source.requireParts(place(), items);
        return items.stream().map(reading).toList();
    }

    String text() {
        if (value instanceof Json.Text text) {
            return text.text();
        }
        throw expected("a text");
    }

    double number() {
        if (value instanceof Json.Figure figure) {
            return figure.value();
        }
        throw expected("a number");
    }

    int whole() {
        if (value instanceof Json.Figure figure && figure.whole() && Math.abs(figure.value()) <= Integer.MAX_VALUE) {
            return (int) figure.value();
        }
        throw expected("a whole number");
    }

    boolean flag() {
        if (value instanceof Json.Flag flag) {
            return flag.value();
        }
        throw expected("true or false");
    }

    /** So many numbers in a list. */
    double[] numbers(int count) {
        List<At> items = items();
        if (items.size() != count) {
            throw refused(count + " numbers are needed here, but there are " + items.size() + " values");
        }
        return items.stream().mapToDouble(At::number).toArray();
    }

    Vector2D point() {
        double[] xy = numbers(2);
        return Vector2D.of(xy[0], xy[1]);
    }

    /** One of a closed list of words. */
    <T> T word(T[] all, Function<T, String> word) {
        String text = text();
        return Stream.of(all)
                .filter(each -> word.apply(each).equals(text))
                .findFirst()
                .orElseThrow(() -> refused("'" + text + "' is not known here; known are "
                        + Stream.of(all).map(word).collect(Collectors.joining(", "))));
    }
}
