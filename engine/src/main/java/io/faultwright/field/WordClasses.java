package io.faultwright.field;

import io.faultwright.model.Condition.CannotBeTaken;
import io.faultwright.model.Condition.OneOf;
import io.faultwright.model.Sorted;
import io.faultwright.model.Value;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** A class for each word of a choice or equipment fact. */
final class WordClasses implements Classes {
  private final List<String> words;
  private final boolean ordered;
  private final Map<String, Integer> classes = new HashMap<>();

  /**
   * For these words.
   *
   * @param ordered whether they may be split into earlier and later ones, as versions are
   */
  WordClasses(List<String> words, boolean ordered) {
    this.words = List.copyOf(words);
    this.ordered = ordered;
    IntStream.range(0, words.size()).forEach(at -> classes.put(words.get(at), at));
  }

  @Override
  public int of(Value value) {
    return value instanceof Value.Word word ? classes.get(word.id()) : NOT_TAKEN;
  }

  @Override
  public Stream<Split> splits(Histogram wanted, Histogram others) {
    List<Split> splits = new ArrayList<>();
    splits.add(new Split(new CannotBeTaken(), wanted.in(NOT_TAKEN), others.in(NOT_TAKEN)));
    for (int at = 0; at < words.size(); at++) {
      splits.add(split(at, at + 1, wanted, others));
    }
    for (int at = 0; at < words.size(); at++) {
      splits.add(rest(at, wanted, others));
    }
    for (int at = 2; ordered && at < words.size(); at++) {
      splits.add(split(0, at, wanted, others));
      splits.add(split(at - 1, words.size(), wanted, others));
    }
    return splits.stream();
  }

  /** The words from one on, up to another that is not among them. */
  private Split split(int from, int to, Histogram wanted, Histogram others) {
    return new Split(
        new OneOf(Sorted.set(words.subList(from, to))),
        IntStream.range(from, to).mapToLong(wanted::in).sum(),
        IntStream.range(from, to).mapToLong(others::in).sum());
  }

  /** Every word but one. */
  private Split rest(int but, Histogram wanted, Histogram others) {
    List<String> left = new ArrayList<>(words);
    left.remove(but);
    return new Split(
        new OneOf(Sorted.set(left)),
        wanted.rows() - wanted.in(NOT_TAKEN) - wanted.in(but),
        others.rows() - others.in(NOT_TAKEN) - others.in(but));
  }
}
