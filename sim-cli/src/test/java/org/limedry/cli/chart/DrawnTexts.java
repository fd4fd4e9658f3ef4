package org.limedry.cli.chart;

import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.SAXException;

/** The texts that really stand in an SVG, read back from it, and what is wrong with where they stand. */
record DrawnTexts(List<Drawn> texts, Rectangle2D image) {
    // COMMON PRACTICE, no source: letters of a text stand between 0.72 sizes over its baseline and 0.21 below.
    private static final double CAPITAL_SIZES = 0.72;
    private static final double TAIL_SIZES = 0.21;
    private static final double SMALLEST_PX = 13;
    private static final Pattern SIZE = Pattern.compile("font-size: ([0-9.]+)px");

    record Drawn(String words, double sizePx, Rectangle2D box) {}

    static DrawnTexts of(String svg) {
        Document document = parsed(svg);
        List<Drawn> texts = new ArrayList<>();
        NodeList nodes = document.getElementsByTagName("text");
        IntStream.range(0, nodes.getLength()).forEach(i -> texts.add(drawn((Element) nodes.item(i))));
        double[] box = numbers(document.getDocumentElement().getAttribute("viewBox"), " ");
        return new DrawnTexts(texts, new Rectangle2D.Double(box[0], box[1], box[2], box[3]));
    }

    static Document parsed(String svg) {
        try {
            return DocumentBuilderFactory.newInstance()
                    .newDocumentBuilder()
                    .parse(new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8)));
        } catch (ParserConfigurationException | SAXException | IOException e) {
            throw new IllegalArgumentException("no XML: " + svg, e);
        }
    }

    private static Drawn drawn(Element text) {
        String style = text.getAttribute("style");
        Matcher size = SIZE.matcher(style);
        if (!size.find()) {
            throw new IllegalArgumentException("no type size: " + style);
        }
        double sizePx = Double.parseDouble(size.group(1));
        String words = text.getTextContent();
        double width = TextWidths.inSizes(words, style.contains("bold")) * sizePx;
        double x = Double.parseDouble(text.getAttribute("x"));
        double y = Double.parseDouble(text.getAttribute("y"));
        Rectangle2D box =
                new Rectangle2D.Double(x, y - CAPITAL_SIZES * sizePx, width, (CAPITAL_SIZES + TAIL_SIZES) * sizePx);
        String transform = ((Element) text.getParentNode()).getAttribute("transform");
        return new Drawn(words, sizePx, moved(box, transform));
    }

    private static Rectangle2D moved(Rectangle2D box, String transform) {
        if (transform.isEmpty()) {
            return box;
        }
        double[] matrix = numbers(transform.replace("matrix(", "").replace(")", ""), ",");
        return new AffineTransform(matrix).createTransformedShape(box).getBounds2D();
    }

    private static double[] numbers(String list, String between) {
        return Arrays.stream(list.split(between, -1))
                .mapToDouble(Double::parseDouble)
                .toArray();
    }

    List<String> words() {
        return texts.stream().map(Drawn::words).toList();
    }

    /** Returns one line for each text that lies on another, leaves the image or is too small. */
    List<String> faults() {
        List<String> faults = new ArrayList<>();
        // A tenth of a px is what places are rounded to.
        Rectangle2D paper = Canvas.grown(image, 0.1);
        for (int i = 0; i < texts.size(); i++) {
            Drawn text = texts.get(i);
            if (!paper.contains(text.box())) {
                faults.add("outside the image: " + text);
            }
            if (text.sizePx() < SMALLEST_PX) {
                faults.add("too small: " + text);
            }
            texts.subList(i + 1, texts.size()).stream()
                    .filter(other -> other.box().intersects(text.box()))
                    .forEach(other -> faults.add("overlap: " + text + " and " + other));
        }
        return faults;
    }
}
