package org.draftingmaths.lessons.kernel;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import jdk.jshell.SourceCodeAnalysis;
import jdk.jshell.SourceCodeAnalysis.Completeness;
import jdk.jshell.SourceCodeAnalysis.CompletionInfo;

/**
 * Cuts a cell into fragments. A line whose first character is a per cent sign and whose second is a letter or another
 * per cent sign is addressed to the kernel, wherever it stands, as on the other Java kernels.
 */
final class CellSplitter {
    private static final Pattern KERNEL_LINE = Pattern.compile("(?m)^[ \\t]*%[%A-Za-z].*$");

    private final SourceCodeAnalysis analysis;

    CellSplitter(SourceCodeAnalysis analysis) {
        this.analysis = analysis;
    }

    List<Fragment> split(String source) {
        List<Fragment> fragments = new ArrayList<>();
        Matcher line = KERNEL_LINE.matcher(source);
        int from = 0;
        while (line.find()) {
            addJava(source.substring(from, line.start()), from, fragments);
            fragments.add(new Fragment(true, line.group().strip(), line.start()));
            from = line.end();
        }
        addJava(source.substring(from), from, fragments);
        return fragments;
    }

    private void addJava(String text, int offset, List<Fragment> fragments) {
        // Blank lines before a snippet would shift the line numbers that JShell gives for a failure in it.
        String rest = text.stripLeading();
        while (!rest.isBlank()) {
            CompletionInfo info = analysis.analyzeCompletion(rest);
            if (info.completeness() == Completeness.EMPTY) {
                return;
            }
            int at = offset + text.length() - rest.length();
            boolean complete = info.completeness().isComplete();
            // Incomplete text is evaluated all the same: its diagnostics say best what is missing.
            fragments.add(new Fragment(false, complete ? info.source() : rest, at));
            rest = complete ? info.remaining().stripLeading() : "";
        }
    }
}
