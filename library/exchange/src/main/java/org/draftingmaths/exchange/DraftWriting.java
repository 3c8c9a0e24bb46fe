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
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.AffineTransformMatrix2D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.Arc;
import org.draftingmaths.curve.Cubic;
import org.draftingmaths.curve.Curve;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.curve.Straight;
import org.draftingmaths.piece.Border;
import org.draftingmaths.piece.Draft;
import org.draftingmaths.piece.Edge;
import org.draftingmaths.piece.Grain;
import org.draftingmaths.piece.InsideDart;
import org.draftingmaths.piece.Laid;
import org.draftingmaths.piece.LegShape;
import org.draftingmaths.piece.LevelLine;
import org.draftingmaths.piece.Mouth;
import org.draftingmaths.piece.Notch;
import org.draftingmaths.piece.Opening;
import org.draftingmaths.piece.Panel;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Run;
import org.draftingmaths.piece.Seam;
import org.draftingmaths.piece.Stretch;
import org.draftingmaths.piece.Use;

/** Writes a draft as JSON, every double with as many digits as it takes to read the same double again. */
final class DraftWriting {

    /** The shortest digits that read back, by an algorithm of the writer's own: the same in every version of Java. */
    private static final JsonFactory FACTORY = new JsonFactoryBuilder()
            .enable(StreamWriteFeature.USE_FAST_DOUBLE_WRITER)
            .build();

    private final JsonGenerator json;

    private DraftWriting(JsonGenerator json) {
        this.json = json;
    }

    static String text(Draft draft) {
        StringWriter text = new StringWriter();
        try (JsonGenerator json = FACTORY.createGenerator(text)) {
            json.setPrettyPrinter(new DefaultPrettyPrinter().withObjectIndenter(new DefaultIndenter("  ", "\n")));
            new DraftWriting(json).draft(draft);
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return text.append('\n').toString();
    }

    private interface Writing<T> {
        void write(T value) throws IOException;
    }

    private <T> void list(String name, List<T> values, Writing<T> writing) throws IOException {
        json.writeArrayFieldStart(name);
        for (T value : values) {
            writing.write(value);
        }
        json.writeEndArray();
    }

    private <T> void objects(String name, List<T> values, Writing<T> writing) throws IOException {
        list(name, values, value -> {
            json.writeStartObject();
            writing.write(value);
            json.writeEndObject();
        });
    }

    private <T> void object(String name, T value, Writing<T> writing) throws IOException {
        json.writeObjectFieldStart(name);
        writing.write(value);
        json.writeEndObject();
    }

    private void text(String name, String text) throws IOException {
        if (!StandardCharsets.UTF_8.newEncoder().canEncode(text)) {
            throw new IllegalArgumentException("The name [" + text + "] holds half a character and cannot be written.");
        }
        json.writeStringField(name, text);
    }

    private void numbers(String name, double... numbers) throws IOException {
        json.writeFieldName(name);
        json.writeArray(numbers, 0, numbers.length);
    }

    private void point(String name, Vector2D point) throws IOException {
        numbers(name, point.getX(), point.getY());
    }

    private void draft(Draft draft) throws IOException {
        json.writeStartObject();
        text("format", DraftFiles.FORMAT);
        json.writeNumberField("version", DraftFiles.VERSION);
        text("name", draft.name());
        objects("pieces", draft.pieces(), this::piece);
        objects("seams", draft.seams(), this::seam);
        json.writeEndObject();
    }

    private void piece(Piece piece) throws IOException {
        text("name", piece.name());
        objects("edges", piece.edges(), this::edge);
        objects("openings", piece.openings(), this::opening);
        objects("panels", piece.panels(), this::panel);
        objects("levels", piece.levels(), this::level);
        objects("insideDarts", piece.insideDarts(), this::insideDart);
        objects("notches", piece.notches(), this::notch);
        if (piece.grain().isPresent()) {
            object("grain", piece.grain().get(), this::grain);
        }
    }

    private void edge(Edge edge) throws IOException {
        text("name", edge.name());
        text("role", Terms.of(edge.role()));
        json.writeNumberField("allowance", edge.allowance());
        path("base", edge.base());
    }

    private void path(String name, CurvePath path) throws IOException {
        objects(name, path.curves(), this::curve);
    }

    private void curve(Curve curve) throws IOException {
        if (curve instanceof Straight straight) {
            points("straight", straight.start(), straight.end());
        } else if (curve instanceof Cubic cubic) {
            points("cubic", cubic.start(), cubic.startHandle(), cubic.endHandle(), cubic.end());
        } else {
            object("arc", (Arc) curve, this::arc);
        }
    }

    private void points(String name, Vector2D... points) throws IOException {
        list(name, List.of(points), point -> json.writeArray(new double[] {point.getX(), point.getY()}, 0, 2));
    }

    private void arc(Arc arc) throws IOException {
        point("centre", arc.centre());
        json.writeNumberField("radius", arc.radius());
        json.writeNumberField("startAngle", arc.startAngle());
        json.writeNumberField("sweep", arc.sweep());
    }

    private void opening(Opening opening) throws IOException {
        text("name", opening.name());
        object("mouth", opening.mouth(), this::mouth);
        if (opening.farMouth().isPresent()) {
            object("farMouth", opening.farMouth().get(), this::mouth);
        }
        path("before", opening.before());
        path("after", opening.after());
    }

    private void mouth(Mouth mouth) throws IOException {
        border(mouth.border());
        json.writeNumberField("before", mouth.before());
        json.writeNumberField("after", mouth.after());
        object("use", mouth.use(), this::use);
    }

    private void border(Border border) throws IOException {
        if (border instanceof Border.OfEdge edge) {
            text("edge", edge.edge());
        } else {
            Border.OfLeg leg = (Border.OfLeg) border;
            text("opening", leg.opening());
            text("leg", Terms.of(leg.leg()));
        }
    }

    private void use(Use use) throws IOException {
        use.of(new Use.Cases<Writing<JsonGenerator>>() {
                    @Override
                    public Writing<JsonGenerator> dart(Use.Dart dart) {
                        return to -> {
                            text("as", Terms.DART);
                            to.writeNumberField("setBack", dart.setBack());
                            text("press", dart.press().map(Terms::of).orElse(Terms.OPEN));
                            shape(dart.shape());
                        };
                    }

                    @Override
                    public Writing<JsonGenerator> folded(Use.Folded folded) {
                        return to -> {
                            text("as", Terms.FOLDED);
                            text("under", Terms.of(folded.under()));
                            to.writeNumberField("depth", folded.depth());
                            text("lines", Terms.of(folded.lines()));
                        };
                    }

                    @Override
                    public Writing<JsonGenerator> left(Use.Left left) {
                        return to -> text("as", Terms.of(left.kind()));
                    }
                })
                .write(json);
    }

    private void shape(LegShape shape) throws IOException {
        objects("shape", shape.offs(), off -> {
            json.writeNumberField("share", off.share());
            json.writeNumberField("out", off.out());
        });
    }

    private void panel(Panel panel) throws IOException {
        objects("ring", panel.ring(), this::run);
        objects("lines", panel.lines(), this::stretch);
        objects("darts", panel.darts(), this::laid);
    }

    private void run(Run run) throws IOException {
        border(run.border());
        json.writeNumberField("from", run.from());
        json.writeNumberField("to", run.to());
        json.writeBooleanField("forward", run.forward());
        motion(run.motion());
    }

    private void stretch(Stretch stretch) throws IOException {
        text("line", stretch.line());
        json.writeNumberField("from", stretch.from());
        json.writeNumberField("to", stretch.to());
        motion(stretch.motion());
    }

    private void laid(Laid laid) throws IOException {
        text("dart", laid.dart());
        motion(laid.motion());
    }

    private void motion(AffineTransformMatrix2D motion) throws IOException {
        numbers("motion", motion.toArray());
    }

    private void level(LevelLine level) throws IOException {
        text("name", level.name());
        path("base", level.base());
    }

    private void insideDart(InsideDart dart) throws IOException {
        text("name", dart.name());
        point("oneTip", dart.oneTip());
        point("otherTip", dart.otherTip());
        point("oneSide", dart.oneSide());
        point("otherSide", dart.otherSide());
        shape(dart.shape());
    }

    private void notch(Notch notch) throws IOException {
        text("edge", notch.edge());
        json.writeNumberField("arc", notch.arc());
        text("beside", Terms.of(notch.beside()));
    }

    private void grain(Grain grain) throws IOException {
        point("from", grain.from());
        point("to", grain.to());
    }

    private void seam(Seam seam) throws IOException {
        text("name", seam.name());
        objects("first", seam.first().parts(), this::part);
        objects("second", seam.second().parts(), this::part);
        objects("held", seam.held(), this::held);
        json.writeBooleanField("caught", seam.caught());
    }

    private void part(Seam.Part part) throws IOException {
        text("piece", part.piece());
        text("edge", part.edge());
        json.writeBooleanField("forward", part.forward());
        json.writeBooleanField("mirrored", part.mirrored());
        if (part.from().isPresent()) {
            object("from", part.from().get(), this::place);
        }
        if (part.to().isPresent()) {
            object("to", part.to().get(), this::place);
        }
    }

    private void place(Seam.Place place) throws IOException {
        json.writeNumberField("arc", place.arc());
        text("beside", Terms.of(place.beside()));
    }

    private void held(Seam.Held held) throws IOException {
        json.writeNumberField("interval", held.interval());
        json.writeNumberField("surplus", held.surplus());
        text("how", Terms.of(held.how()));
        text("reason", held.reason());
    }
}
