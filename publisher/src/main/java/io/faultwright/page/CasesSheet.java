package io.faultwright.page;

import java.util.List;

/**
 * How good the recorded cases are, as one page of its own.
 *
 * @param frame title, language and edition of the handbook
 * @param facts what was measured, in sentences
 * @param criteria symptom by criterion
 * @param equipment symptom by model and software; several where one would be too wide
 * @param symptoms the complaints, each on its own
 * @param mistakes mistakes put in: one, or none where they were not asked for
 */
public record CasesSheet(
    Frame frame,
    List<String> facts,
    HeatTable criteria,
    List<HeatTable> equipment,
    List<Complaint> symptoms,
    List<Mistakes> mistakes) {
  /**
   * What the cases of a complaint show.
   *
   * @param id of the symptom
   * @param title of the symptom
   * @param rules rule by model and software; several where one would be too wide
   * @param open what no case shows
   */
  public record Complaint(String id, String title, List<HeatTable> rules, List<Open> open) {}

  /**
   * What is open by one criterion.
   *
   * @param criterion its title
   * @param count how many goals are
   * @param goals them; none where they are only counted
   */
  public record Open(String criterion, int count, List<Item> goals) {}

  /**
   * Something with its place in the files.
   *
   * @param words what; ids and values stand between backticks
   * @param place file and line
   */
  public record Item(String words, String place) {}

  /**
   * Mistakes put into rules and limits.
   *
   * @param score how many the cases notice, in a sentence
   * @param kinds kind of mistake by how many of them are noticed
   * @param unnoticed those that are not
   */
  public record Mistakes(String score, HeatTable kinds, List<Survivor> unnoticed) {}

  /**
   * A mistake that no case notices.
   *
   * @param rule id of the rule it is in; empty where it is in none
   * @param item what and where
   * @param situation one that would show it; empty where none was found in time
   * @param right what the rules say there
   * @param wrong what they say with the mistake
   */
  public record Survivor(
      String rule, Item item, List<Fact> situation, String right, String wrong) {}
}
