package io.faultwright.layout;

import io.faultwright.words.Words;
import java.util.List;

/** Sets the equipment that a chart holds for into a few lines; what is left out is said. */
final class ScopeText {
  private final String scope;
  private final String rest;

  ScopeText(String scope, Words say) {
    this.rest = " … " + say.say("(in full at the foot of the page)");
    this.scope = Wrap.clean(scope);
  }

  /** Whether it fits in full. */
  boolean fits(Wrap wrap, double width, int most) {
    return fits(scope, wrap, width, most);
  }

  private static boolean fits(String text, Wrap wrap, double width, int most) {
    return wrap.lines(text, width, most + 1).size() <= most;
  }

  /** What fits in some lines: all, or the first items with a note where the others stand. */
  String shown(Wrap wrap, double width, int most) {
    return fits(wrap, width, most) ? scope : shortened(wrap, width, most);
  }

  private String shortened(Wrap wrap, double width, int most) {
    String kept = scope;
    while (!kept.isEmpty() && !fits(kept + rest, wrap, width, most)) {
      int end = Math.max(kept.lastIndexOf(", "), kept.lastIndexOf("; "));
      kept = end > 0 ? kept.substring(0, end) : kept.substring(0, Math.max(0, lastWord(kept)));
    }
    return (kept + rest).strip();
  }

  private static int lastWord(String text) {
    return text.lastIndexOf(' ');
  }

  /** The lines of what is shown. */
  List<String> lines(Wrap wrap, double width, int most) {
    return wrap.lines(shown(wrap, width, most), width, most);
  }
}
