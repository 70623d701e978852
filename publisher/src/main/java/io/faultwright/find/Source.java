package io.faultwright.find;

import java.util.List;

/**
 * An entry with the texts in which it is found besides its title.
 *
 * @param entry what is found
 * @param names other names and numbers
 * @param about what says what it is
 * @param texts what else is said of it
 */
public record Source(Entry entry, List<String> names, List<String> about, List<String> texts) {
  public Source {
    names = List.copyOf(names);
    about = List.copyOf(about);
    texts = List.copyOf(texts);
  }
}
