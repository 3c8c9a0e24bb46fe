package org.draftingmaths.exchange;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/** Sentences that differ in one quoted name only, said as one with all names. */
final class Alike {

    private static final Pattern NAME = Pattern.compile("'[^']*'");

    private final String frame;
    private final List<String> names;

    /** Which name differs; none while there is one sentence. */
    private int place = -1;

    private final List<String> variants = new ArrayList<>();

    private Alike(String sentence) {
        frame = frame(sentence);
        names = names(sentence);
    }

    /** Each group stands where the first of its sentences stood; a sentence that was said is not said again. */
    static List<String> grouped(List<String> sentences) {
        List<Alike> groups = new ArrayList<>();
        for (String sentence : sentences) {
            if (groups.stream().noneMatch(group -> group.takes(sentence))) {
                groups.add(new Alike(sentence));
            }
        }
        return groups.stream().map(Alike::sentence).toList();
    }

    private static String frame(String sentence) {
        return NAME.matcher(sentence).replaceAll("''");
    }

    private static List<String> names(String sentence) {
        return NAME.matcher(sentence).results().map(MatchResult::group).toList();
    }

    private boolean takes(String sentence) {
        if (!frame(sentence).equals(frame)) {
            return false;
        }
        List<String> other = names(sentence);
        int[] differ = IntStream.range(0, names.size())
                .filter(i -> !names.get(i).equals(other.get(i)))
                .toArray();
        if (differ.length > 1 || (differ.length == 1 && place >= 0 && differ[0] != place)) {
            return false;
        }
        if (differ.length == 1) {
            place = differ[0];
            variants.add(other.get(place));
        }
        return true;
    }

    private String sentence() {
        StringBuilder said = new StringBuilder();
        String[] parts = frame.split("''", -1);
        for (int i = 0; i < names.size(); i++) {
            said.append(parts[i]).append(i == place ? all() : names.get(i));
        }
        said.append(parts[names.size()]);
        boolean measured = place >= 0 && frame.chars().anyMatch(Character::isDigit);
        return measured ? said.toString().replaceAll("\\.$", ", each.") : said.toString();
    }

    private String all() {
        int last = variants.size() - 1;
        String before =
                variants.subList(0, last).stream().map(name -> ", " + name).reduce(names.get(place), String::concat);
        return before + " and " + variants.get(last);
    }
}
