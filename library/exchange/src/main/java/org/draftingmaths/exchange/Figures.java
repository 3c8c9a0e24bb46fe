package org.draftingmaths.exchange;

import java.util.function.UnaryOperator;

/** Reads numbers out of an attribute of an SVG file, from left to right, as the SVG grammar has them. */
final class Figures {

    private final String text;
    private final UnaryOperator<String> place;
    private final Source source;
    private int at;

    /**
     * A reading of one text.
     *
     * @param place makes the place in the file of what is said about the text
     */
    Figures(String text, Source source, UnaryOperator<String> place) {
        this.text = text;
        this.source = source;
        this.place = place;
        space();
    }

    boolean done() {
        return at >= text.length();
    }

    char next() {
        return done() ? '\0' : text.charAt(at);
    }

    char take() {
        char taken = next();
        at++;
        space();
        return taken;
    }

    /** Letters up to something else, as the name of a transform or a unit. */
    String word() {
        int from = at;
        while (!done() && Character.isLetter(text.charAt(at))) {
            at++;
        }
        String word = text.substring(from, at);
        space();
        return word;
    }

    FileException refused(String reason) {
        return source.refused(place.apply("character " + (at + 1)), reason);
    }

    void require(char wanted) {
        if (next() != wanted) {
            throw refused("'" + wanted + "' is needed here, but there is " + found());
        }
        take();
    }

    String found() {
        return done() ? "the end" : "'" + text.charAt(at) + "'";
    }

    private void space() {
        while (!done() && " \t\r\n\f".indexOf(text.charAt(at)) >= 0) {
            at++;
        }
    }

    /** At most one comma, which a number must follow. */
    void separator() {
        if (comma() && !startsNumber()) {
            throw refused("a number is needed after the comma, but there is " + found());
        }
    }

    /** At most one comma. */
    boolean comma() {
        boolean there = next() == ',';
        if (there) {
            take();
        }
        return there;
    }

    boolean startsNumber() {
        char c = next();
        return digit(c) || c == '.' || c == '-' || c == '+';
    }

    double number() {
        int from = at;
        if (next() == '-' || next() == '+') {
            at++;
        }
        int digits = digits();
        if (next() == '.') {
            at++;
            digits += digits();
        }
        if (digits == 0) {
            at = from;
            throw refused("a number is needed here, but there is " + found());
        }
        exponent();
        double value = Double.parseDouble(text.substring(from, at));
        if (!Double.isFinite(value)) {
            at = from;
            throw refused("the number is too large");
        }
        source.count(() -> place.apply("character " + (at + 1)));
        space();
        return value;
    }

    private int digits() {
        int from = at;
        while (digit(next())) {
            at++;
        }
        return at - from;
    }

    /** An {@code e} that no digit follows is not part of the number: it may be the unit em. */
    private void exponent() {
        if (next() != 'e' && next() != 'E') {
            return;
        }
        int before = at;
        at++;
        if (next() == '-' || next() == '+') {
            at++;
        }
        if (digits() == 0) {
            at = before;
        }
    }

    /** A single 0 or 1, which nothing need separate from what follows. */
    boolean flag() {
        if (next() != '0' && next() != '1') {
            throw refused("a flag, 0 or 1, is needed here, but there is " + found());
        }
        return take() == '1';
    }

    private static boolean digit(char c) {
        return c >= '0' && c <= '9';
    }
}
