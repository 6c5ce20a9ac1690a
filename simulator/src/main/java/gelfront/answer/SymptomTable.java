// SPDX-License-Identifier: Apache-2.0
package gelfront.answer;

import static gelfront.answer.Fault.DENT;
import static gelfront.answer.Fault.OTHER;
import static gelfront.answer.Fault.SHORT_SHOT;
import static gelfront.answer.Fault.TRAPPED_AIR;

import gelfront.answer.Symptom.Aspect;
import java.util.List;
import java.util.Set;

/**
 * The decision table: what each symptom says for and against each fault. All of it is common
 * practice, no source; the weights are our own.
 */
public final class SymptomTable {
  /** Where all of this comes from. */
  public static final String SOURCE = "common practice, no source";

  private SymptomTable() {}

  /**
   * @param seen the symptom
   * @param fault that it speaks for or against
   * @param weight above 0 for, below 0 against; 4 all but settles it
   * @param because in words
   */
  public record Rule(Symptom seen, Fault fault, int weight, String because) {}

  /**
   * @param seen that don't fit together
   * @param words what to look at again
   */
  public record Clash(Set<Symptom> seen, String words) {
    public Clash {
      seen = Set.copyOf(seen);
    }
  }

  /**
   * What to do first.
   *
   * @param fault that was found
   * @param seen what must have been seen for it; none: always
   * @param without what must not have been seen for it
   * @param words what to do
   */
  public record Step(Fault fault, Set<Symptom> seen, Set<Symptom> without, String words) {
    public Step {
      seen = Set.copyOf(seen);
      without = Set.copyOf(without);
    }

    Step(Fault fault, Set<Symptom> seen, String words) {
      this(fault, seen, Set.of(), words);
    }

    boolean fits(Fault found, Set<Symptom> all) {
      return fault == found && all.containsAll(seen) && without.stream().noneMatch(all::contains);
    }
  }

  public static final List<Rule> RULES =
      List.of(
          new Rule(
              Symptom.TEXTURED,
              DENT,
              4,
              "the skin touched the wall, took its texture, and was pulled in later"),
          new Rule(
              Symptom.TEXTURED, TRAPPED_AIR, -4, "where air was, plastisol never touched the wall"),
          new Rule(Symptom.TEXTURED, SHORT_SHOT, -2, "an edge that stopped short has no texture"),
          new Rule(Symptom.SMOOTH, TRAPPED_AIR, 3, "plastisol never touched the wall there"),
          new Rule(
              Symptom.SMOOTH, SHORT_SHOT, 2, "a front that stopped short sets rounded and bare"),
          new Rule(Symptom.SMOOTH, DENT, -4, "a dent keeps the cavity's texture"),
          new Rule(Symptom.CAVED, DENT, 2, "a soft skin gives way broadly, not in spots"),
          new Rule(Symptom.CAVED, TRAPPED_AIR, -1, "air leaves a pit with a rim"),
          new Rule(Symptom.ROUND, TRAPPED_AIR, 2, "air leaves a pit with rounded rims"),
          new Rule(Symptom.ROUND, DENT, -1, "a dent has no rim"),
          new Rule(Symptom.MISSING, SHORT_SHOT, 4, "the cavity was not filled"),
          new Rule(Symptom.MISSING, DENT, -2, "a dent takes depth, not outline"),
          new Rule(Symptom.THICK, DENT, 2, "the thick place sets last and pulls longest"),
          new Rule(Symptom.THICK, SHORT_SHOT, -2, "thick places fill first"),
          new Rule(Symptom.END, SHORT_SHOT, 2, "ends, fins and tails fill last and set first"),
          new Rule(Symptom.END, TRAPPED_AIR, 1, "the flow drives air before it into the ends"),
          new Rule(Symptom.TOP, TRAPPED_AIR, 2, "air rises and has nowhere to go"),
          new Rule(
              Symptom.GATE, OTHER, 2, "a gate that is cut or torn off while soft leaves a hollow"),
          new Rule(Symptom.GATE, DENT, 1, "a thick place at the gate is the last one fed"),
          new Rule(
              Symptom.SEAM,
              OTHER,
              4,
              "halves that are offset, not clamped or dirty mark the parting line"),
          new Rule(Symptom.EVERY, DENT, 1, "the design dents, so each part does"),
          new Rule(Symptom.FIRST, SHORT_SHOT, 2, "a cold mould sets the front before it arrives"),
          new Rule(Symptom.FIRST, DENT, 1, "in a cold mould gate and thin places close earlier"),
          new Rule(
              Symptom.SOME,
              OTHER,
              2,
              "what changes from shot to shot is stirred-in air, damp, dirt, heat or the hand"),
          new Rule(Symptom.SOME, TRAPPED_AIR, 1, "bubbles from the pour don't land twice alike"),
          new Rule(Symptom.SOME, DENT, -1, "the same design shrinks alike each time"),
          new Rule(Symptom.SINKING, DENT, 1, "the part shrinks and draws on the sprue"),
          new Rule(Symptom.LEVEL, SHORT_SHOT, -1, "what was poured was not drawn away"),
          new Rule(Symptom.CURES, DENT, 2, "pressure feeds what shrinks"),
          new Rule(Symptom.CURES, SHORT_SHOT, 1, "pressure fills what was left"),
          new Rule(Symptom.CURES, OTHER, -1, "damp and dirt don't mind pressure"),
          new Rule(Symptom.NOTHING, TRAPPED_AIR, 1, "air that can't leave is only squeezed"),
          new Rule(Symptom.NOTHING, OTHER, 1, "pressure does not cure handling"));

  public static final List<Clash> CLASHES =
      List.of(
          new Clash(
              Set.of(Symptom.TEXTURED, Symptom.MISSING),
              "A missing piece has no texture: is the edge sharp and textured (torn out on opening) or"
                  + " rounded and smooth (never filled)?"),
          new Clash(
              Set.of(Symptom.TEXTURED, Symptom.ROUND),
              "Rounded rims with texture inside are rare: look at the rim in slanting light, or press"
                  + " clay on it, to see whether the texture runs on."),
          new Clash(
              Set.of(Symptom.SMOOTH, Symptom.CAVED),
              "A broad hollow that is smooth is either a dent in a polished cavity, which has no texture"
                  + " to keep, or a large flat bubble: is the cavity itself textured there?"),
          new Clash(
              Set.of(Symptom.SMOOTH, Symptom.CURES),
              "Holding rarely cures trapped air: it may press a bubble small. Cut one open: is there a"
                  + " hollow under the skin?"),
          new Clash(
              Set.of(Symptom.MISSING, Symptom.THICK),
              "Thick places fill first: was something in the mould, or was the shot too small?"));

  /** First things first: what costs nothing, then what fits best, then what always fits. */
  public static final List<Step> STEPS =
      List.of(
          new Step(
              DENT,
              Set.of(),
              Set.of(Symptom.CURES, Symptom.NOTHING),
              "The first thing to try costs nothing: hold the plunger longer, then top up."),
          new Step(
              DENT,
              Set.of(Symptom.CURES),
              "Holding cures it, so hold in every shot until the gate has set; a wider gate lets"
                  + " you hold for longer."),
          new Step(
              DENT,
              Set.of(Symptom.LEVEL),
              "The sprue stays level, so something behind it closed: open the gate by half a"
                  + " millimetre at a time; the first millimetres count most."),
          new Step(
              DENT,
              Set.of(Symptom.SINKING),
              "The sprue keeps sinking, so the way is open: give it more to draw on, a top-up in time"
                  + " or a wider or longer sprue."),
          new Step(
              DENT,
              Set.of(Symptom.NOTHING),
              "Holding changes nothing, so the gate, or a neck in the part, closes early: widen it, or"
                  + " feed at the thick place."),
          new Step(
              DENT,
              Set.of(Symptom.FIRST),
              "Warm the mould or throw the first shots away; gelfront series says how many."),
          new Step(
              TRAPPED_AIR,
              Set.of(Symptom.END),
              "Lead the vent to the very end: that is where the flow drives the air."),
          step(
              TRAPPED_AIR,
              "Let the air out: a vent a few hundredths of a millimetre deep on the parting line at the"
                  + " place, or turn the mould so that the place isn't the highest."),
          step(
              TRAPPED_AIR,
              "Inject slower and without a break, and let the plastisol stand until stirred-in air has"
                  + " left it."),
          new Step(
              SHORT_SHOT,
              Set.of(Symptom.FIRST),
              "Warm the mould before the first shot: it cures itself once the mould is warm."),
          new Step(
              SHORT_SHOT,
              Set.of(Symptom.END),
              "Vent the end: air that can't leave keeps plastisol out, too."),
          step(
              SHORT_SHOT,
              "Shoot without a break and with more in the injector than the mould takes; then faster,"
                  + " then a warmer mould, a hotter shot only last and never above 190 °C."),
          new Step(
              OTHER,
              Set.of(Symptom.SEAM),
              "Clean the parting faces, check the pins, clamp harder, press less."),
          new Step(
              OTHER,
              Set.of(Symptom.GATE),
              "Trim the gate cold, with a blade; don't twist it off while it is soft."),
          step(
              OTHER,
              "Look at what was different: damp or dirt in the mould, stirred-in air, the shot's"
                  + " temperature, when the mould was opened. Change one thing at a time."));

  private static Step step(Fault fault, String words) {
    return new Step(fault, Set.of(), words);
  }

  /** Symptoms of an aspect, in words for an error. */
  public static String choices(Aspect a) {
    return String.join(", ", a.symptoms().stream().map(Symptom::word).toList());
  }
}
