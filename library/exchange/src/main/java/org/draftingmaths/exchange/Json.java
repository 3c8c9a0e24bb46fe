package org.draftingmaths.exchange;

import java.util.List;
import java.util.Map;

/** A value of a JSON document, and the line and column where it begins. */
sealed interface Json {

    int line();

    int column();

    /** Its kind in words. */
    String words();

    record Members(Map<String, Json> members, int line, int column) implements Json {
        @Override
        public String words() {
            return "an object";
        }
    }

    record Items(List<Json> items, int line, int column) implements Json {
        @Override
        public String words() {
            return "a list";
        }
    }

    record Text(String text, int line, int column) implements Json {
        @Override
        public String words() {
            return "the text [" + (text.length() > 40 ? text.substring(0, 40) + "..." : text) + "]";
        }
    }

    record Figure(double value, boolean whole, int line, int column) implements Json {
        @Override
        public String words() {
            return "the number " + value;
        }
    }

    record Flag(boolean value, int line, int column) implements Json {
        @Override
        public String words() {
            return String.valueOf(value);
        }
    }

    record Nothing(int line, int column) implements Json {
        @Override
        public String words() {
            return "null";
        }
    }
}
