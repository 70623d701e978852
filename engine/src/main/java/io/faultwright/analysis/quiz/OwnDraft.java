package io.faultwright.analysis.quiz;

import io.faultwright.model.OwnItem;
import io.faultwright.model.OwnItem.Reply;
import io.faultwright.model.QuizPlan.Footing;
import io.faultwright.model.Signed;
import io.faultwright.model.SignedKind;
import io.faultwright.model.Sorted;
import io.faultwright.quiz.Choice;
import io.faultwright.quiz.Choice.Content;
import io.faultwright.quiz.Item;
import io.faultwright.quiz.Item.Explanation;
import io.faultwright.quiz.Item.Origin;
import io.faultwright.quiz.Item.Rating;
import io.faultwright.quiz.ItemKind;
import io.faultwright.quiz.Link;
import io.faultwright.quiz.Stem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * An item that a trainer wrote; it has the same figures for everybody.
 *
 * @param session id of its session
 */
record OwnDraft(String session, OwnItem own) implements Draft {
  @Override
  public ItemKind kind() {
    return ItemKind.OWN;
  }

  @Override
  public String symptom() {
    return own.symptom();
  }

  @Override
  public String theme() {
    return key();
  }

  @Override
  public String key() {
    return session + "/" + own.id();
  }

  @Override
  public String id() {
    return kind().slug() + "-" + own.id();
  }

  @Override
  public Optional<Item> item(long seed, int participant) {
    List<Choice> choices = new ArrayList<>();
    choices.add(Choice.right(content(own.right())));
    own.wrong().forEach(reply -> choices.add(Choice.wrong(content(reply))));
    Signed footing =
        own.footing()
            .map(Footing::on)
            .orElseGet(() -> new Signed(SignedKind.SYMPTOM, own.symptom()));
    return Optional.of(
        new Item(
            id(),
            new Stem.Own(own),
            Dice.of(key(), seed, participant).shuffled(choices),
            new Origin(
                own.symptom(),
                Sorted.set(Set.of()),
                footing,
                own.footing().map(Footing::meaning).orElse("")),
            new Explanation(List.of(), Link.symptom(own.symptom())),
            new Rating(0, own.difficulty())));
  }

  private static Content content(Reply reply) {
    return reply
        .answer()
        .<Content>map(Choice.Outcome::new)
        .orElseGet(() -> new Choice.Said(reply.text()));
  }
}
