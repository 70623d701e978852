package io.faultwright.translation;

import io.faultwright.model.Guide;
import java.util.ArrayList;
import java.util.List;

/** What a guide says, whatever its lines are like. */
public final class GuidePassages {
  private GuidePassages() {}

  /**
   * One passage.
   *
   * @param text as it stands there
   * @param keys under which it is looked up in a catalogue, the likeliest first
   * @param code whether it is a block of code, in which blanks and line breaks count
   */
  public record Passage(String text, List<String> keys, boolean code) {
    public Passage {
      keys = List.copyOf(keys);
    }
  }

  /** The passages between its blank lines, in the written order. */
  public static List<Passage> of(Guide guide) {
    List<Passage> passages = new ArrayList<>();
    new GuideBlocks(guide)
        .reworded(
            shown -> {
              passages.add(new Passage(shown.text(), shown.keys(), isCode(shown.text())));
              return shown.text();
            });
    return passages;
  }

  private static boolean isCode(String text) {
    String start = text.stripLeading();
    return start.startsWith("```") || start.startsWith("~~~");
  }
}
