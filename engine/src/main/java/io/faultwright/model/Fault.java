package io.faultwright.model;

import io.faultwright.source.Place;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A cause that can be mended.
 *
 * @param id identifier
 * @param place where it stands
 * @param title as printed
 * @param about a sentence or two
 * @param remedy what to do, in order
 * @param verify how to see that the repair worked, in order
 * @param parts ids of spare parts
 * @param nameplate labels of the nameplate data that the remedy needs, in the written order
 * @param cautions ids of the cautions to show before the remedy
 * @param frequency how often it is met, relative to the other faults
 * @param guide id of the page that explains it
 * @param applies equipment that can have it
 */
public record Fault(
    String id,
    Place place,
    String title,
    String about,
    List<Step> remedy,
    List<Step> verify,
    SortedSet<String> parts,
    List<String> nameplate,
    SortedSet<String> cautions,
    BigFraction frequency,
    Optional<String> guide,
    Condition applies) {
  public Fault {
    remedy = List.copyOf(remedy);
    verify = List.copyOf(verify);
    parts = Sorted.set(parts);
    nameplate = List.copyOf(nameplate);
    cautions = Sorted.set(cautions);
  }

  /**
   * One instruction.
   *
   * @param place where it stands
   * @param text the instruction
   * @param access what has to be opened or touched
   * @param cautions ids of the cautions to show before it, those of its access kind included
   */
  public record Step(Place place, String text, Access access, SortedSet<String> cautions) {
    public Step {
      cautions = Sorted.set(cautions);
    }
  }
}
