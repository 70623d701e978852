package io.faultwright.page;

import java.util.ArrayList;
import java.util.List;

/** The ways that stand at the head of every page of the site. */
record Navigation(Desk desk, Addresses addresses) {
  List<Link> ways(boolean draft) {
    List<Link> ways = new ArrayList<>();
    ways.add(way(desk.say("Complaints"), Target.START));
    ways.add(way(desk.say("Guided diagnosis"), Target.DIAGNOSIS));
    ways.add(way(desk.say("Equipment"), Target.EQUIPMENT));
    ways.add(way(desk.say("Safety"), Target.SAFETY));
    ways.add(way(desk.say("Search"), Target.SEARCH));
    ways.add(way(desk.say("A to Z"), Target.INDEX));
    if (draft) {
      ways.add(way(desk.say("Findings"), Target.FINDINGS));
    }
    return ways;
  }

  private Link way(String text, Target to) {
    return new Link(text, addresses.href(to));
  }
}
