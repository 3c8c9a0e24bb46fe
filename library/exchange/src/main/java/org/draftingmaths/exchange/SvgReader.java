package org.draftingmaths.exchange;

import java.io.StringReader;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import javax.xml.XMLConstants;
import javax.xml.stream.Location;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.apache.commons.geometry.euclidean.twod.AffineTransformMatrix2D;
import org.draftingmaths.piece.Role;

/**
 * Takes the shapes out of an SVG file with the JDK's own parser: no document type is obeyed, no entity expanded, nothing fetched.
 * Elements are walked, not nested, so that depth costs no stack.
 */
final class SvgReader {

    private static final String SVG = "http://www.w3.org/2000/svg";

    /** Elements that hold shapes of the drawing itself. */
    private static final Set<String> HOLDERS = Set.of("svg", "g", "a", "switch");

    /** Elements that draw nothing where they stand, or only describe. */
    private static final Set<String> SILENT = Set.of(
            "defs",
            "symbol",
            "clipPath",
            "mask",
            "marker",
            "pattern",
            "filter",
            "linearGradient",
            "radialGradient",
            "style",
            "script",
            "title",
            "desc",
            "metadata");

    private static final AffineTransformMatrix2D Y_UP = AffineTransformMatrix2D.createScale(1, -1);

    private final Source source;
    private final OptionalDouble unit;
    private final XMLStreamReader xml;
    private final Deque<Holder> holders = new ArrayDeque<>();
    private final List<SvgShape> shapes = new ArrayList<>();
    private final Map<String, Integer> leftOut = new TreeMap<>();
    private int groups;

    /** An element that holds shapes: the map from its units to paper, and its name. */
    private record Holder(AffineTransformMatrix2D toPaper, int group, String name, boolean own) {}

    private SvgReader(Source source, OptionalDouble unit, XMLStreamReader xml) {
        this.source = source;
        this.unit = unit;
        this.xml = xml;
    }

    /** What a file holds: its shapes, and how many of each kind of element that draws something was left out. */
    record Found(List<SvgShape> shapes, Map<String, Integer> leftOut) {}

    static Found read(Source source, OptionalDouble unit) {
        try {
            String text = source.text();
            requireNoDeclarations(source, text);
            XMLStreamReader xml = factory().createXMLStreamReader(new StringReader(text));
            try {
                SvgReader reader = new SvgReader(source, unit, xml);
                reader.walk();
                return new Found(reader.shapes, reader.leftOut);
            } finally {
                xml.close();
            }
        } catch (XMLStreamException broken) {
            throw new FileException(source.name(), place(broken.getLocation()), reason(broken), broken);
        }
    }

    /** A document type may name the standard's, but declare nothing of its own: that is where entities swell and fetch. */
    private static void requireNoDeclarations(Source source, String text) {
        int at = afterProlog(text);
        if (!text.startsWith("<!DOCTYPE", at)) {
            return;
        }
        int declarations = text.indexOf('[', at);
        int end = text.indexOf('>', at);
        if (end < 0 || (declarations >= 0 && declarations < end)) {
            long line = 1 + text.substring(0, at).chars().filter(c -> c == '\n').count();
            throw source.refused(
                    "line " + line,
                    "a document type with declarations of its own is not read; save the drawing as plain SVG");
        }
    }

    /** Past the space, comments and instructions that may stand before a document type. */
    private static int afterProlog(String text) {
        int at = 0;
        while (at < text.length()) {
            if (Character.isWhitespace(text.charAt(at))) {
                at++;
            } else if (text.startsWith("<?", at) && text.indexOf("?>", at) > 0) {
                at = text.indexOf("?>", at) + 2;
            } else if (text.startsWith("<!--", at) && text.indexOf("-->", at + 4) > 0) {
                at = text.indexOf("-->", at + 4) + 3;
            } else {
                return at;
            }
        }
        return at;
    }

    private static XMLInputFactory factory() {
        XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
        factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
        factory.setProperty(XMLConstants.ACCESS_EXTERNAL_DTD, "");
        return factory;
    }

    private static String place(Location at) {
        return at == null ? "" : "line " + at.getLineNumber() + ", column " + at.getColumnNumber();
    }

    /** The parser's message without the place, which is said already. */
    private static String reason(XMLStreamException broken) {
        String message = String.valueOf(broken.getMessage());
        int said = message.indexOf("Message: ");
        return "it is not well-formed XML: " + (said < 0 ? message : message.substring(said + 9)).strip();
    }

    private String place() {
        return place(xml.getLocation());
    }

    /** The JDK's parser gives up on some spoiled files with other exceptions than its own. */
    private int next() throws XMLStreamException {
        try {
            return xml.next();
        } catch (RuntimeException broken) {
            throw new FileException(
                    source.name(), place(), "it is not well-formed XML: " + broken.getMessage(), broken);
        }
    }

    private void walk() throws XMLStreamException {
        while (xml.hasNext()) {
            int event = next();
            if (event == XMLStreamConstants.START_ELEMENT) {
                element();
            } else if (event == XMLStreamConstants.END_ELEMENT) {
                holders.pop();
            }
        }
    }

    /** Every element that is entered is a holder; any other is passed over with all that is in it. */
    private void element() throws XMLStreamException {
        source.count(this::place);
        String name = xml.getLocalName();
        boolean drawing = xml.getNamespaceURI() == null || xml.getNamespaceURI().equals(SVG);
        if (holders.isEmpty() && !(drawing && name.equals("svg"))) {
            throw source.refused(place(), "this is not SVG: its first element is '" + name + "'");
        }
        Map<String, String> attributes = attributes();
        if (!drawing || SILENT.contains(name) || hidden(attributes)) {
            skip();
        } else if (HOLDERS.contains(name)) {
            enter(name, attributes);
        } else if (SvgShapes.NAMES.contains(name)) {
            shape(name, attributes);
            skip();
        } else {
            leftOut.merge(name, 1, Integer::sum);
            skip();
        }
    }

    private Map<String, String> attributes() {
        Map<String, String> attributes = new LinkedHashMap<>();
        for (int i = 0; i < xml.getAttributeCount(); i++) {
            if (xml.getAttributeNamespace(i) == null
                    || xml.getAttributeNamespace(i).isEmpty()) {
                attributes.put(xml.getAttributeLocalName(i), xml.getAttributeValue(i));
            }
        }
        return attributes;
    }

    private boolean hidden(Map<String, String> attributes) {
        String style = attributes.getOrDefault("style", "").replaceAll("\\s", "");
        if (Stream.of(style.split(";")).anyMatch(each -> each.startsWith("transform:"))) {
            throw source.refused(place(), "a transform in a style is not read; write it as the attribute transform");
        }
        return attributes.getOrDefault("display", "").strip().equals("none")
                || Arrays.asList(style.split(";")).contains("display:none");
    }

    private void enter(String name, Map<String, String> attributes) {
        requireDepth(holders.size() + 1);
        AffineTransformMatrix2D toPaper;
        if (holders.isEmpty()) {
            toPaper = Y_UP.multiply(UserUnit.toPaper(attributes, unit, source, place()));
        } else if (name.equals("svg")) {
            throw source.refused(place(), "an svg inside another is not read; put its shapes into a group");
        } else {
            toPaper = holders.element().toPaper();
        }
        String id = attributes.getOrDefault("id", "").strip();
        boolean own = name.equals("g") && !id.isEmpty();
        boolean root = holders.isEmpty();
        String around = own ? id : root ? "" : holders.element().name();
        holders.push(new Holder(toPaper.multiply(transform(attributes)), groups++, around, own));
    }

    private AffineTransformMatrix2D transform(Map<String, String> attributes) {
        String place = place();
        return Transforms.read(new Figures(
                attributes.getOrDefault("transform", ""), source, at -> place + ", attribute transform, " + at));
    }

    private void shape(String name, Map<String, String> attributes) {
        Holder holder = holders.element();
        String place = place();
        AffineTransformMatrix2D toPaper = holder.toPaper().multiply(transform(attributes));
        List<Subpath> subpaths = SvgShapes.of(name, attributes, source, place).stream()
                .map(subpath -> subpath.mapped(toPaper))
                .toList();
        List<String> classes =
                List.of(attributes.getOrDefault("class", "").strip().split("\\s+"));
        shapes.add(new SvgShape(
                attributes.getOrDefault("id", "").strip(),
                role(classes),
                classes.contains("grain"),
                holder.group(),
                holder.name(),
                holder.own(),
                place,
                subpaths));
        source.requireParts(place, shapes);
    }

    /** A class that is the word of a role, spaces as hyphens; without one an edge is sewn. */
    private static Role role(List<String> classes) {
        return Stream.of(Role.values())
                .filter(role -> classes.contains(Terms.of(role).replace(' ', '-')))
                .findFirst()
                .orElse(Role.SEAM);
    }

    /** Passes over the rest of an element, however deep. */
    private void skip() throws XMLStreamException {
        int depth = 1;
        while (depth > 0) {
            int event = next();
            if (event == XMLStreamConstants.START_ELEMENT) {
                source.count(this::place);
                depth++;
                requireDepth(holders.size() + depth);
            } else if (event == XMLStreamConstants.END_ELEMENT) {
                depth--;
            }
        }
    }

    private void requireDepth(int depth) {
        if (depth > source.limits().depth()) {
            throw source.refused(
                    place(),
                    "elements are nested more than the " + source.limits().depth() + " deep that are read");
        }
    }
}
