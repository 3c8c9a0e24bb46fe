package org.draftingmaths.lessons.runner;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Tells code from text: in Java source, what is inside comments, strings and text blocks. */
final class JavaText {
    private static final String TEXT_BLOCK = "\"\"\"(?:\\\\.|[^\\\\])*?\"\"\"";
    private static final String STRING = "\"(?:\\\\.|[^\\\\\"\\n])*\"?";
    private static final String CHARACTER = "'(?:\\\\.|[^\\\\'\\n])*'?";
    private static final String COMMENT = "//[^\\n]*|/\\*.*?\\*/";
    private static final Pattern NOT_CODE =
            Pattern.compile("(?<block>" + TEXT_BLOCK + ")|" + STRING + "|" + CHARACTER + "|" + COMMENT, Pattern.DOTALL);

    private JavaText() {}

    /** The source with blanks for all that is not code, every newline and every offset kept. */
    static String codeOnly(String source) {
        return blank(source, false);
    }

    /** The source with blanks for all that is not a text block, every newline and every offset kept. */
    static String textBlocksOnly(String source) {
        return blank(source, true);
    }

    private static String blank(String source, boolean keepBlocks) {
        StringBuilder result = new StringBuilder();
        Matcher found = NOT_CODE.matcher(source);
        int from = 0;
        while (found.find()) {
            String code = source.substring(from, found.start());
            result.append(keepBlocks ? blanks(code) : code);
            boolean keep = keepBlocks && found.group("block") != null;
            result.append(keep ? found.group() : blanks(found.group()));
            from = found.end();
        }
        String code = source.substring(from);
        return result.append(keepBlocks ? blanks(code) : code).toString();
    }

    private static String blanks(String text) {
        return text.replaceAll("[^\\n]", " ");
    }
}
