package org.draftingmaths.unit;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Map;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads the written forms of a length and explains refusals. */
final class LengthReader {

    private static final String ACCEPTED =
            "accepted are forms like 2 in, 5/8 in, 2 5/8 in, 2-5/8\", 2.625 in, 6.7 cm, 67 mm";

    /** The longest canonical text of a double in millimetres stays below this. */
    private static final int LONGEST_TEXT = 400;

    private static final int LARGEST_DENOMINATOR = 64;

    private static final Pattern FRACTION =
            Pattern.compile("(?:(?<whole>[0-9]+)(?: +|-))?(?<top>[0-9]+)/(?<bottom>[0-9]+) *(?:in|\")");
    private static final Pattern NUMBER = Pattern.compile("(?<number>[0-9]+(?:\\.[0-9]+)?) *(?<unit>in|\"|cm|mm)");

    /** The single signs of the trade's fractions, and what they stand for. */
    private static final Map<String, String> SIGNS = Map.of(
            "\u00bd", "1/2", "\u00bc", "1/4", "\u00be", "3/4", "\u215b", "1/8", "\u215c", "3/8", "\u215d", "5/8",
            "\u215e", "7/8");

    private static final Pattern SIGN = Pattern.compile("(?<digit>[0-9]?)(?<sign>[\u00bc-\u00be\u215b-\u215e])");
    private static final Pattern OTHER_SIGN = Pattern.compile("[\u2150-\u215a\u215f\u2189]");

    private static final Pattern DIGIT_COMMA_DIGIT = Pattern.compile("[0-9] *, *[0-9]");
    private static final Pattern TWO_NUMBERS = Pattern.compile("[0-9]+(?: +|-)[0-9]+ *(?:in|\")");
    private static final Pattern BARE_NUMBER = Pattern.compile("[0-9]+(?:\\.[0-9]+)?|(?:[0-9]+[ -]+)?[0-9]+/[0-9]+");
    private static final Pattern EXPONENT = Pattern.compile("[0-9.]+[eE][+-]?[0-9]+ *(?:in|\"|cm|mm)?");
    private static final Pattern METRIC_FRACTION = Pattern.compile("[0-9 -]+/[0-9]+ *(?:cm|mm)");
    private static final Pattern HALF_POINT = Pattern.compile("(?:\\.[0-9]+|[0-9]+\\.) *(?:in|\"|cm|mm)?");

    private LengthReader() {}

    static Length read(String text) {
        String trimmed = spelled(Objects.requireNonNull(text, "text").strip());
        if (trimmed.length() > LONGEST_TEXT) {
            throw refused(trimmed.substring(0, 40) + "...", "it has more than " + LONGEST_TEXT + " characters");
        }
        Matcher fraction = FRACTION.matcher(trimmed);
        if (fraction.matches()) {
            return fromFraction(fraction, text);
        }
        Matcher number = NUMBER.matcher(trimmed);
        if (number.matches()) {
            return fromNumber(number, text);
        }
        throw refused(text, reason(trimmed));
    }

    /** Every single-sign fraction written out, one space after the whole number: 1\u00bd becomes 1 1/2. */
    private static String spelled(String text) {
        return SIGN.matcher(text)
                .replaceAll(
                        found -> (found.group(1).isEmpty() ? "" : found.group(1) + " ") + SIGNS.get(found.group(2)));
    }

    /** Reads a length that must be written in inches. */
    static Length readInches(String text) {
        Length length = read(text);
        if (isMetric(text)) {
            throw refused(text, "an inch value was expected here");
        }
        return length;
    }

    /** Reads a length that must be written in centimetres or millimetres. */
    static Length readMetric(String text) {
        Length length = read(text);
        if (!isMetric(text)) {
            throw refused(text, "a value in cm or mm was expected here");
        }
        return length;
    }

    private static boolean isMetric(String text) {
        return text.strip().endsWith("m");
    }

    private static Length fromFraction(Matcher match, String text) {
        BigDecimal whole = match.group("whole") == null ? BigDecimal.ZERO : new BigDecimal(match.group("whole"));
        BigDecimal top = new BigDecimal(match.group("top"));
        BigDecimal bottom = new BigDecimal(match.group("bottom"));
        if (bottom.compareTo(BigDecimal.valueOf(2)) < 0
                || bottom.compareTo(BigDecimal.valueOf(LARGEST_DENOMINATOR)) > 0) {
            throw refused(text, "the denominator of a fraction must be from 2 to " + LARGEST_DENOMINATOR);
        }
        if (top.signum() == 0 || top.compareTo(bottom) >= 0) {
            throw refused(text, "a fraction must be above zero and below one");
        }
        BigDecimal mm =
                whole.multiply(bottom).add(top).multiply(Decimals.MM_PER_INCH).divide(bottom, MathContext.DECIMAL128);
        return length(mm, text);
    }

    private static Length fromNumber(Matcher match, String text) {
        BigDecimal number = new BigDecimal(match.group("number"));
        return switch (match.group("unit")) {
            case "mm" -> length(number, text);
            case "cm" -> length(number.movePointRight(1), text);
            default -> length(number.multiply(Decimals.MM_PER_INCH), text);
        };
    }

    private static Length length(BigDecimal mm, String text) {
        double value = mm.doubleValue();
        if (Double.isInfinite(value)) {
            throw refused(text, "it is too large");
        }
        return new Length(value);
    }

    private static String reason(String text) {
        if (text.isEmpty()) {
            return "it is empty";
        }
        if (DIGIT_COMMA_DIGIT.matcher(text).find()) {
            return "it has a decimal comma, or a comma between thousands; write a decimal point, as in 1.5 cm";
        }
        if (text.startsWith("-") || text.startsWith("+") || text.startsWith("\u2212")) {
            return "a measured length is written without a sign";
        }
        if (TWO_NUMBERS.matcher(text).matches()) {
            return "a mixed number needs a fraction, as in 2 3/8 in";
        }
        if (BARE_NUMBER.matcher(text).matches()) {
            return "it has no unit";
        }
        if (EXPONENT.matcher(text).matches()) {
            return "an exponent is not a form of the trade; write all digits";
        }
        if (METRIC_FRACTION.matcher(text).matches()) {
            return "fractions are read in inches only";
        }
        if (HALF_POINT.matcher(text).matches()) {
            return "a decimal point needs digits on both sides";
        }
        if (OTHER_SIGN.matcher(text).find()) {
            return "of the fractions in one sign only halves, quarters and eighths are read; write others as in 2/3 in";
        }
        return "it is not a number with a unit";
    }

    private static IllegalArgumentException refused(String text, String reason) {
        return new IllegalArgumentException("Cannot read [" + text + "] as a length: " + reason + "; " + ACCEPTED);
    }
}
