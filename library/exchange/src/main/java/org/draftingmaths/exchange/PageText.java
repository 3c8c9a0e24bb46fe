package org.draftingmaths.exchange;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** The forms in which a page of text is written. */
enum PageText {
    /** Markdown (CommonMark). */
    MARKDOWN {
        @Override
        String head(String title) {
            return "# " + escaped(title) + "\n\n";
        }

        @Override
        String heading(String words) {
            return "## " + escaped(words) + "\n\n";
        }

        @Override
        String subheading(String words) {
            return "### " + escaped(words) + "\n\n";
        }

        @Override
        String together(String content) {
            return content;
        }

        @Override
        String page(String content) {
            return content;
        }

        @Override
        String columns(String heading, String content) {
            return content.isEmpty() ? "" : heading + content;
        }

        @Override
        String paragraph(String words) {
            return words.isEmpty() ? "" : escaped(words) + "\n\n";
        }

        @Override
        String numbered(int first, List<String> items) {
            return items.isEmpty()
                    ? ""
                    : IntStream.range(0, items.size())
                            .mapToObj(i -> first + i + ". " + escaped(items.get(i)) + "\n")
                            .collect(Collectors.joining("", "", "\n"));
        }

        @Override
        String list(String lead, List<String> items) {
            return items.isEmpty()
                    ? ""
                    : items.stream()
                            .map(item -> "- " + escaped(item) + "\n")
                            .collect(Collectors.joining("", escaped(lead) + "\n\n", "\n"));
        }

        @Override
        String picture(String svg) {
            return "";
        }

        @Override
        String foot() {
            return "";
        }

        private String escaped(String words) {
            return words.replaceAll("([\\\\`*_<>\\[\\]#|])", "\\\\$1");
        }
    },

    /** HTML: a page of its own, which loads nothing. */
    HTML {
        @Override
        String head(String title) {
            return "<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n<title>" + escaped(title)
                    + "</title>\n<style>\n"
                    + "body{font-family:" + Lettering.FAMILY
                    + ";line-height:1.4;max-width:64em;margin:2em auto;padding:0 1em}\n"
                    + "h2,h3{margin:1.2em 0 0.4em;break-after:avoid}\np{margin:0.5em 0}\nol,ul{margin:0.5em 0}\n"
                    + "li{margin:0.2em 0;break-inside:avoid}\n"
                    + "section,figure{break-inside:avoid}\nfigure{margin:0.5em 0}\nfigure svg{max-height:60vh}\n"
                    + ".columns{columns:2 24em;column-gap:2.5em}\n.columns h3{margin-top:0}\nsection{margin-bottom:1.2em}\n"
                    + "@media print{body{font-size:9.5pt;max-width:none;margin:0;padding:0}\n"
                    + ".page{break-after:page}\nfigure svg{max-height:95mm}\n"
                    + ".columns{columns:2}\n.columns figure svg{max-height:72mm}}\n"
                    + "</style>\n</head>\n<body>\n<h1>" + escaped(title) + "</h1>\n";
        }

        @Override
        String heading(String words) {
            return "<h2>" + escaped(words) + "</h2>\n";
        }

        @Override
        String subheading(String words) {
            return "<h3>" + escaped(words) + "</h3>\n";
        }

        @Override
        String together(String content) {
            return "<section>\n" + content + "</section>\n";
        }

        @Override
        String page(String content) {
            return "<div class=\"page\">\n" + content + "</div>\n";
        }

        @Override
        String columns(String heading, String content) {
            return content.isEmpty() ? "" : heading + "<div class=\"columns\">\n" + content + "</div>\n";
        }

        @Override
        String paragraph(String words) {
            return words.isEmpty() ? "" : "<p>" + escaped(words) + "</p>\n";
        }

        @Override
        String numbered(int first, List<String> items) {
            return items.isEmpty() ? "" : "<ol start=\"" + first + "\">\n" + items(items) + "</ol>\n";
        }

        @Override
        String list(String lead, List<String> items) {
            return items.isEmpty() ? "" : paragraph(lead) + "<ul>\n" + items(items) + "</ul>\n";
        }

        @Override
        String picture(String svg) {
            return "<figure>\n" + svg + "</figure>\n";
        }

        @Override
        String foot() {
            return "</body>\n</html>\n";
        }

        private String items(List<String> items) {
            return items.stream()
                    .map(item -> "<li>" + escaped(item) + "</li>\n")
                    .collect(Collectors.joining());
        }

        /** A figure is not parted from its fraction and its unit. */
        private String escaped(String words) {
            String plain = words.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
            return plain.replaceAll("(?<=\\d) (?=\\d+/\\d|in\\b|cm\\b|mm\\b|sq\\b)", "&#160;");
        }
    };

    /** The page up to its title. */
    abstract String head(String title);

    abstract String heading(String words);

    abstract String subheading(String words);

    /** What is not to be parted by the end of a page. */
    abstract String together(String content);

    /** After this a print goes on with a new page. */
    abstract String page(String content);

    /** Under a heading, in columns where they find room; nothing when there is nothing to be told. */
    abstract String columns(String heading, String content);

    /** Nothing when there are no words. */
    abstract String paragraph(String words);

    /** A numbered list; nothing when it has no items. */
    abstract String numbered(int first, List<String> items);

    /** A list under a line of words; nothing when it has no items. */
    abstract String list(String lead, List<String> items);

    /** A picture; nothing where a page is text alone. */
    abstract String picture(String svg);

    abstract String foot();
}
