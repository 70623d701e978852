package io.faultwright.translation;

import io.faultwright.model.Catalogue;
import io.faultwright.model.Guide;
import io.faultwright.source.Place;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** A guide cut into blocks: what stands between blank lines, a block of code as a whole. */
final class GuideBlocks {
  private static final Pattern FENCE = Pattern.compile("\\s*(`{3,}|~{3,}).*");
  private static final Pattern HEADING = Pattern.compile("#{1,6}[ \\t]+(.*?)[ \\t]*(?:#+[ \\t]*)?");

  private final Place start;
  private final List<Block> blocks = new ArrayList<>();
  private final List<String> lines = new ArrayList<>();
  private String fence = "";

  GuideBlocks(Guide guide) {
    this.start = guide.place();
    int number = 0;
    for (String line : guide.markdown().lines().toList()) {
      number++;
      read(line, number);
    }
    endBlock(number + 1);
  }

  /** Lines without a blank one outside of code; a blank line is a block of its own. */
  private record Block(int line, String text) {}

  /** The Markdown with every block in other words. */
  String reworded(Rewording rewording) {
    return blocks.stream()
        .map(block -> block.text().isBlank() ? "" : reworded(block, rewording))
        .collect(Collectors.joining("\n", "", "\n"));
  }

  private void read(String line, int number) {
    if (fence.isEmpty() && line.isBlank()) {
      endBlock(number);
      blocks.add(new Block(number, ""));
    } else {
      lines.add(line);
      fence = fenceAfter(line);
    }
  }

  private String fenceAfter(String line) {
    Matcher mark = FENCE.matcher(line);
    if (!mark.matches()) {
      return fence;
    }
    if (fence.isEmpty()) {
      return mark.group(1);
    }
    return line.strip().startsWith(fence) ? "" : fence;
  }

  private void endBlock(int number) {
    if (!lines.isEmpty()) {
      blocks.add(new Block(number - lines.size(), String.join("\n", lines)));
      lines.clear();
    }
  }

  private String reworded(Block block, Rewording rewording) {
    String text = block.text();
    String indent = text.substring(0, text.length() - text.stripLeading().length());
    Place place = new Place(start.file(), start.line() + block.line() - 1, 1, 1);
    Matcher heading = HEADING.matcher(text.strip());
    if (!heading.matches()) {
      return indented(indent, rewording.reword(ShownText.of(text, place)), text);
    }
    List<String> keys = List.of(Catalogue.key(text), Catalogue.key(heading.group(1)));
    String other =
        rewording.reword(new ShownText(text, place, keys, Figures.hasLetters(text), false));
    boolean bare = !other.strip().startsWith("#");
    return bare ? text.substring(0, text.indexOf(' ')) + " " + other : other;
  }

  /** A block in a list keeps its indentation. */
  private static String indented(String indent, String other, String text) {
    return other.equals(text)
        ? text
        : other.lines().map(line -> indent + line).collect(Collectors.joining("\n"));
  }
}
