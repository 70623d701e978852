package io.faultwright.handin;

import io.faultwright.handin.IssuedQuiz.Item;
import io.faultwright.handin.IssuedQuiz.Option;
import io.faultwright.handin.IssuedQuiz.Variant;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;

/**
 * Which options of an item are the same for all participants. By their texts, where all have the
 * same texts and the same one is right; else by what they are: the right one, or which near miss.
 * Options that this does not tell apart have the same id.
 */
final class OptionIds {
  private final List<Variant> variants;

  OptionIds(IssuedQuiz quiz) {
    this.variants = quiz.variants();
  }

  /** Ids of the options of an item, by variant; in the order in which each has them. */
  List<List<String>> of(int item) {
    List<Item> all = variants.stream().map(variant -> variant.items().get(item)).toList();
    boolean alike = all.stream().map(OptionIds::texts).distinct().count() == 1;
    boolean sameRight = all.stream().map(OptionIds::right).distinct().count() == 1;
    boolean distinct = texts(all.get(0)).size() == all.get(0).options().size();
    return all.stream()
        .map(one -> alike && sameRight && distinct ? written(one) : roles(one))
        .toList();
  }

  private static Set<String> texts(Item item) {
    return new TreeSet<>(written(item));
  }

  private static List<String> written(Item item) {
    return item.options().stream().map(Option::text).toList();
  }

  private static String right(Item item) {
    return item.options().get(item.right()).text();
  }

  private static List<String> roles(Item item) {
    return IntStream.range(0, item.options().size())
        .mapToObj(i -> i == item.right() ? "the right one" : wrong(item.options().get(i)))
        .toList();
  }

  private static String wrong(Option option) {
    return option.near().isEmpty() ? "another wrong one" : "near miss: " + option.near();
  }
}
