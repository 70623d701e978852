package io.faultwright.render.html;

import io.faultwright.delivery.HandOut;
import io.faultwright.layout.Paper;
import io.faultwright.words.Words;
import java.util.List;
import java.util.Map;

/**
 * Prints a quiz on paper as one well-formed XHTML document, to be set by the PDF renderer: for each
 * participant an answer sheet, then the questions, beginning on a sheet of paper of their own.
 */
public final class PaperHtml {
  private static final String STYLE = "delivery/paper.css";

  private final Templates templates = new Templates();

  /**
   * Prints.
   *
   * @param handOuts at least one
   */
  public String print(List<HandOut> handOuts, Paper paper) {
    Words words = Words.of(handOuts.get(0).frame().language());
    return templates.print(
        "delivery/paper.ftlh",
        words,
        Map.of("handOuts", handOuts, "style", BookHtml.style(words, paper, STYLE)));
  }
}
