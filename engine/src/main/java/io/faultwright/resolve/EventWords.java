package io.faultwright.resolve;

import io.faultwright.diagnostic.NearMatch;
import io.faultwright.diagnostic.Problems;
import io.faultwright.model.NamedValue;
import io.faultwright.model.Sequence;
import io.faultwright.model.Sequence.Event;
import io.faultwright.model.Sequence.InState;
import io.faultwright.model.Sequence.Input;
import io.faultwright.syntax.Node.Entry;
import io.faultwright.syntax.Node.Scalar;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Reads events such as {@code door-switch opens}, and states such as {@code door-switch is open}.
 */
final class EventWords {
  private static final String IS = "is";
  private static final String BECOMES = "becomes";
  private static final Map<String, String> VERBS = Map.of("opens", "open", "closes", "closed");

  private final Map<String, Input> inputs;
  private final SequenceNames names;
  private final Problems problems;

  EventWords(List<Input> inputs, SequenceNames names, Problems problems) {
    this.inputs = inputs.stream().collect(Collectors.toMap(Input::id, one -> one));
    this.names = names;
    this.problems = problems;
  }

  /** For a sequence that was read already. */
  static EventWords of(Sequence sequence, Problems problems) {
    List<Entry> ids =
        sequence.inputs().stream()
            .map(one -> new Scalar(one.id(), false, one.place()))
            .map(key -> new Entry(key, key))
            .toList();
    return new EventWords(sequence.inputs(), new SequenceNames("input", ids, problems), problems);
  }

  /** Whether a text tells a state, and not an event. */
  static boolean isState(String text) {
    String[] words = text.strip().split("\\s+");
    return words.length > 1 && words[1].equals(IS);
  }

  /** A state in which an input has to be. */
  Optional<InState> state(Scalar written) {
    String[] words = written.text().strip().split("\\s+");
    Optional<Input> input = input(written, words[0]);
    if (input.isEmpty()) {
      return Optional.empty();
    }
    if (input.get().isPush()) {
      problems.add(
          written.place(),
          Words.quoted(words[0]) + " is over at once and has no states",
          "write `" + words[0] + "` alone, or give the input `states:`");
      return Optional.empty();
    }
    return known(written, input.get(), rest(words, 2)).map(state -> new InState(words[0], state));
  }

  /** An event, written as the whole of a text. */
  Optional<Event> event(Scalar written) {
    return event(written, written.text().strip());
  }

  /** An event, written as a part of a text. */
  Optional<Event> event(Scalar written, String text) {
    String[] words = text.split("\\s+");
    return input(written, words[0]).flatMap(input -> event(written, input, words));
  }

  private Optional<Event> event(Scalar written, Input input, String[] words) {
    if (input.isPush()) {
      return push(written, input, words);
    }
    if (words.length < 2) {
      problems.add(
          written.place(),
          "what happens to " + Words.quoted(input.id()) + " is not said",
          "write one of " + Words.quoted(forms(input)));
      return Optional.empty();
    }
    int from = words[1].equals(BECOMES) ? 2 : 1;
    Optional<String> state = known(written, input, rest(words, from));
    if (from == 1 && !VERBS.containsKey(words[1]) && state.isPresent()) {
      problems.add(
          written.place(),
          "`" + String.join(" ", words) + "` does not say whether that happens or is so",
          "write `"
              + input.id()
              + " "
              + form(state.get())
              + "` where it happens"
              + "; `"
              + input.id()
              + " is "
              + state.get()
              + "` where it has to be so");
      return Optional.empty();
    }
    return state.map(id -> new Event(input.id(), Optional.of(id)));
  }

  private Optional<Event> push(Scalar written, Input input, String[] words) {
    if (words.length > 1) {
      problems.add(
          written.place(),
          Words.quoted(input.id()) + " has no states, found " + Words.quoted(rest(words, 1)),
          "write `" + input.id() + "` alone, or give the input `states:`");
      return Optional.empty();
    }
    return Optional.of(new Event(input.id(), Optional.empty()));
  }

  private Optional<String> known(Scalar written, Input input, String word) {
    List<String> states = input.states().stream().map(NamedValue::id).toList();
    String state = VERBS.getOrDefault(word, word);
    if (states.contains(state)) {
      return Optional.of(state);
    }
    List<String> forms = forms(input);
    forms.addAll(states);
    problems.add(
        written.place(),
        Words.quoted(input.id()) + " has no state " + Words.quoted(word),
        NearMatch.help(word, forms));
    return Optional.empty();
  }

  /** How its events are written. */
  private static List<String> forms(Input input) {
    List<String> forms = new ArrayList<>();
    input.states().forEach(state -> forms.add(form(state.id())));
    return forms;
  }

  /** How the event is written that an input comes into a state. */
  private static String form(String state) {
    return VERBS.entrySet().stream()
        .filter(verb -> verb.getValue().equals(state))
        .map(Map.Entry::getKey)
        .findFirst()
        .orElse(BECOMES + " " + state);
  }

  private Optional<Input> input(Scalar written, String name) {
    return Optional.ofNullable(inputs.get(names.reference(written, name)));
  }

  private static String rest(String[] words, int from) {
    return String.join(" ", List.of(words).subList(Math.min(from, words.length), words.length));
  }
}
