package io.faultwright.translation;

import io.faultwright.model.KnowledgeBase;
import java.util.ArrayList;
import java.util.List;

/** Every text that a handbook shows. */
public final class Texts {
  private Texts() {}

  /** In the order of the handbook; a text that is shown in several places stands as often. */
  public static List<ShownText> of(KnowledgeBase knowledge) {
    List<ShownText> texts = new ArrayList<>();
    new Reworded(
            text -> {
              texts.add(text);
              return text.text();
            })
        .of(knowledge);
    return List.copyOf(texts);
  }
}
