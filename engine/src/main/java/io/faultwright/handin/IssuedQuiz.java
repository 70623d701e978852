package io.faultwright.handin;

import java.time.LocalDate;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * A quiz as it was given out, with its answers.
 *
 * @param fingerprint by which it is told from another making of it
 * @param registerKey of the check values of certificates
 * @param about what it is about
 * @param passMark hundredths of the items that must be right
 * @param handInBy the last day on which answers are taken
 * @param symptoms titles by id
 * @param variants by participant, from 1; all have the same items in the same order
 */
public record IssuedQuiz(
    String fingerprint,
    String registerKey,
    Course about,
    int passMark,
    Optional<LocalDate> handInBy,
    SortedMap<String, String> symptoms,
    List<Variant> variants) {
  public IssuedQuiz {
    symptoms = Collections.unmodifiableSortedMap(new TreeMap<>(symptoms));
    variants = List.copyOf(variants);
  }

  /**
   * What one participant got.
   *
   * @param participant number, from 1
   * @param key of the check value
   * @param items in their order
   */
  public record Variant(int participant, String key, List<Item> items) {
    public Variant {
      items = List.copyOf(items);
    }
  }

  /**
   * An item as one participant got it.
   *
   * @param id the same for all
   * @param symptom id of what it is about
   * @param question as printed
   * @param options as they were listed
   * @param right place of the right one in the list, from 0
   * @param page of the handbook that explains it, as in {@code fault:charge-low}
   */
  public record Item(
      String id, String symptom, String question, List<Option> options, int right, String page) {
    public Item {
      options = List.copyOf(options);
    }
  }

  /**
   * Something to choose.
   *
   * @param text as printed
   * @param near why it is nearly right; empty where it is not
   */
  public record Option(String text, String near) {}

  /** The items of any participant; ids, topics and order are those of all. */
  public List<Item> items() {
    return variants.get(0).items();
  }

  /** The variant of a participant. */
  public Optional<Variant> variant(int participant) {
    return variants.stream().filter(one -> one.participant() == participant).findFirst();
  }
}
