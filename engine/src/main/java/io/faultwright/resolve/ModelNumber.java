package io.faultwright.resolve;

import io.faultwright.model.Nameplate;
import io.faultwright.model.Nameplate.Coded;
import io.faultwright.model.Nameplate.Digits;
import io.faultwright.model.Nameplate.Literal;
import io.faultwright.model.Nameplate.Segment;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** Reads one model number by the nameplate. */
final class ModelNumber {
  private static final int ENOUGH = 2;

  private final List<Segment> segments;
  private final String number;
  private final List<SortedMap<String, String>> readings = new ArrayList<>();
  private final Set<List<Integer>> hopeless = new HashSet<>();
  private int furthestSegment;
  private int furthestPosition;

  ModelNumber(Nameplate nameplate, String number) {
    this.segments = nameplate.segments();
    this.number = number;
    decode(0, 0, new TreeMap<>());
  }

  /** What the number can mean: attribute to value; none, one, or two where it is ambiguous. */
  List<SortedMap<String, String>> readings() {
    return readings;
  }

  /** The ways to read an ambiguous number, for messages. */
  String ways() {
    return readings.stream().map(ModelNumber::way).collect(Collectors.joining(" or "));
  }

  private static String way(SortedMap<String, String> attributes) {
    return Words.quoted(
        attributes.entrySet().stream()
            .map(attribute -> attribute.getKey() + ": " + attribute.getValue())
            .collect(Collectors.joining(", ")));
  }

  /** What was expected where the number first does not fit. */
  String expected() {
    return furthestSegment < segments.size()
        ? describe(segments.get(furthestSegment))
        : "the end of the number";
  }

  /** The rest of the number from where it first does not fit; empty where it is too short. */
  String found() {
    return number.substring(furthestPosition);
  }

  private void decode(int segment, int position, SortedMap<String, String> attributes) {
    List<Integer> state = List.of(segment, position);
    if (readings.size() >= ENOUGH || hopeless.contains(state)) {
      return;
    }
    reach(segment, position);
    int before = readings.size();
    if (segment == segments.size()) {
      accept(position, attributes);
    } else {
      advance(segment, position, attributes);
    }
    if (readings.size() == before) {
      hopeless.add(state);
    }
  }

  private void reach(int segment, int position) {
    if (segment > furthestSegment) {
      furthestSegment = segment;
      furthestPosition = position;
    }
  }

  private void accept(int position, SortedMap<String, String> attributes) {
    if (position == number.length()) {
      readings.add(attributes);
    }
  }

  private void advance(int index, int position, SortedMap<String, String> attributes) {
    Segment segment = segments.get(index);
    if (segment instanceof Literal literal && number.startsWith(literal.text(), position)) {
      decode(index + 1, position + literal.text().length(), attributes);
    } else if (segment instanceof Digits digits && hasDigits(position, digits.count())) {
      decode(index + 1, position + digits.count(), attributes);
    } else if (segment instanceof Coded coded) {
      coded.codes().forEach((code, value) -> code(index, position, attributes, code, value));
    }
  }

  private void code(
      int index, int position, SortedMap<String, String> attributes, String code, String value) {
    String attribute = ((Coded) segments.get(index)).attribute();
    boolean agrees = attributes.getOrDefault(attribute, value).equals(value);
    if (agrees && number.startsWith(code, position)) {
      SortedMap<String, String> more = new TreeMap<>(attributes);
      more.put(attribute, value);
      decode(index + 1, position + code.length(), more);
    }
  }

  private boolean hasDigits(int position, int count) {
    return number.length() >= position + count
        && number.substring(position, position + count).matches("[0-9]+");
  }

  private static String describe(Segment segment) {
    if (segment instanceof Literal literal) {
      return Words.quoted(literal.text());
    }
    if (segment instanceof Digits digits) {
      return digits.count() + (digits.count() == 1 ? " digit" : " digits");
    }
    Coded coded = (Coded) segment;
    return "a code of `" + coded.attribute() + "` (" + Words.quoted(coded.codes().keySet()) + ")";
  }
}
