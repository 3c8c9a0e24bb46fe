package org.draftingmaths.exchange;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonFactoryBuilder;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.StreamWriteFeature;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Optional;
import org.draftingmaths.check.Weights;
import org.draftingmaths.ledger.Finding;
import org.draftingmaths.suppose.Supposition;
import org.draftingmaths.unit.Steps;

/** Findings as JSON, for other programs; {@code FORMAT.md} beside the sources describes it. */
public final class FindingsJson {

    /** What stands in the field {@code format}. */
    public static final String FORMAT = "drafting-maths findings";

    /** The version that is written. */
    public static final int VERSION = 2;

    private static final JsonFactory FACTORY = new JsonFactoryBuilder()
            .enable(StreamWriteFeature.USE_FAST_DOUBLE_WRITER)
            .build();

    private FindingsJson() {}

    /**
     * Findings on a draft.
     *
     * @param draft the name of the draft
     * @param findings the findings; figures are written in mm, square mm and radians
     * @param weights by what their severity is told, for example {@link Weights#COMMON}
     * @param notes what was done to the draft when it was read
     * @param steps the steps to which the sentences round lengths
     * @return the text, lines ended by a line feed
     */
    public static String text(String draft, List<Finding> findings, Weights weights, List<String> notes, Steps steps) {
        return text(draft, Optional.empty(), findings, weights, notes, steps);
    }

    /**
     * Findings on a draft of which something was supposed.
     *
     * @param draft the name of the draft
     * @param suppositions what was supposed
     * @param findings the findings; figures are written in mm, square mm and radians
     * @param weights by what their severity is told, for example {@link Weights#COMMON}
     * @param notes what was done to the draft when it was read
     * @param steps the steps to which the sentences round lengths
     * @return the text, lines ended by a line feed
     */
    public static String text(
            String draft,
            List<Supposition> suppositions,
            List<Finding> findings,
            Weights weights,
            List<String> notes,
            Steps steps) {
        return text(draft, Optional.of(suppositions), findings, weights, notes, steps);
    }

    private static String text(
            String draft,
            Optional<List<Supposition>> suppositions,
            List<Finding> findings,
            Weights weights,
            List<String> notes,
            Steps steps) {
        StringWriter text = new StringWriter();
        try (JsonGenerator json = FACTORY.createGenerator(text)) {
            json.setPrettyPrinter(new DefaultPrettyPrinter().withObjectIndenter(new DefaultIndenter("  ", "\n")));
            json.writeStartObject();
            json.writeStringField("format", FORMAT);
            json.writeNumberField("version", VERSION);
            json.writeStringField("draft", draft);
            if (suppositions.isPresent()) {
                json.writeArrayFieldStart("suppositions");
                for (Supposition supposition : suppositions.get()) {
                    write(supposition, steps, json);
                }
                json.writeEndArray();
            }
            json.writeArrayFieldStart("findings");
            for (Finding finding : findings) {
                write(finding, weights, steps, json);
            }
            json.writeEndArray();
            json.writeArrayFieldStart("notes");
            for (String note : notes) {
                json.writeString(note);
            }
            json.writeEndArray();
            json.writeEndObject();
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return text.append('\n').toString();
    }

    private static void write(Supposition supposition, Steps steps, JsonGenerator json) throws IOException {
        json.writeStartObject();
        json.writeStringField("kind", supposition.kind().name());
        json.writeStringField("sureness", supposition.sureness().words());
        json.writeArrayFieldStart("places");
        for (String place : supposition.places()) {
            json.writeString(place);
        }
        json.writeEndArray();
        json.writeArrayFieldStart("figures");
        for (Supposition.Figure figure : supposition.figures()) {
            json.writeStartObject();
            json.writeStringField("name", figure.name());
            json.writeStringField("quantity", figure.quantity().name());
            json.writeNumberField("value", figure.value());
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeStringField("sentence", supposition.sentence(steps));
        json.writeEndObject();
    }

    private static void write(Finding finding, Weights weights, Steps steps, JsonGenerator json) throws IOException {
        json.writeStartObject();
        json.writeStringField("kind", finding.kind().name());
        json.writeStringField("severity", weights.of(finding).words());
        json.writeStringField("where", finding.where());
        json.writeStringField("quantity", finding.quantity().name());
        json.writeNumberField("measured", finding.measured());
        json.writeNumberField("expected", finding.expected());
        json.writeNumberField("tolerance", finding.tolerance());
        json.writeStringField("sentence", finding.sentence(steps));
        json.writeStringField("remedy", finding.remedy());
        json.writeEndObject();
    }
}
