package bellcrank.statics.explain;

import bellcrank.statics.device.Device;
import bellcrank.statics.limits.Event;
import bellcrank.statics.limits.FrictionFactor;
import bellcrank.statics.limits.GivingWay;
import bellcrank.statics.limits.Verdict;
import bellcrank.statics.units.Dimension;
import bellcrank.statics.units.UnitSystem;
import java.util.List;

/** Puts what limits say into words. */
final class LimitWords {

  /** Share by which two ratios may differ and count as one. */
  private static final double SAME = 1e-6;

  private final Device device;
  private final UnitSystem units;
  private final Figures figures;

  LimitWords(Device device, UnitSystem units, Figures figures) {
    this.device = device;
    this.units = units;
    this.figures = figures;
  }

  String words(Step step) {
    if (step instanceof Step.AtLimit one) {
      String how = one.how().words(device, units);
      boolean tips = one.how().events().stream().anyMatch(event -> event.kind() == Event.Kind.TIPS);
      return "At the "
          + (one.greatest() ? "greatest " : "least ")
          + one.sought()
          + " the device is about to give way: "
          + how
          + "."
          + (tips ? " The normal force of what tips acts at its edge." : "");
    }
    if (step instanceof Step.JustHeld one) {
      String with =
          one.friction() == 1
              ? ""
              : ", with "
                  + figures.text(one.friction(), Dimension.NUMBER)
                  + " times the friction that there is";
      return "Statics alone leaves forces open. Here are those with which it just holds"
          + with
          + events(one.how())
          + ".";
    }
    if (step instanceof Step.Margin one) {
      return margin(one);
    }
    if (step instanceof Step.PinFriction one) {
      return "The friction couple in "
          + one.pin()
          + " is at most r sin φ = "
          + new LawWords(figures).circle(one.radius(), one.angle())
          + " times its force, either way.";
    }
    if (step instanceof Step.ThreadLaw one) {
      return thread(one);
    }
    Step.Judged one = (Step.Judged) step;
    return "Verdict: " + verdict(one.verdict()) + friction(one.friction());
  }

  private String margin(Step.Margin one) {
    double used = Math.abs(one.ratio());
    String coefficient = figures.text(one.coefficient(), Dimension.NUMBER);
    String most = force(one.coefficient() * one.normalForce());
    String can =
        "it can give μ · N = " + coefficient + " · " + force(one.normalForce()) + " = " + most;
    String head =
        one.part()
            + " sticks as long as friction over normal force is at most μ = "
            + coefficient
            + ". Here ";
    if (Math.abs(used - one.coefficient()) <= SAME * one.coefficient()) {
      return head + "it is just that, so nothing is to spare: " + can + ".";
    }
    return used < one.coefficient()
        ? head + "it is less, so it sticks: " + can + "."
        : head + "it is more, so it would slip: " + can + ", balance needs more.";
  }

  private String force(double newtons) {
    return figures.text(newtons, Dimension.FORCE) + " " + figures.unit(Dimension.FORCE);
  }

  private String couple(double newtonMetres) {
    return figures.text(newtonMetres, Dimension.MOMENT) + " " + figures.unit(Dimension.MOMENT);
  }

  private String thread(Step.ThreadLaw one) {
    LawWords law = new LawWords(figures);
    double size = Math.abs(one.force());
    String words = "In the thread of " + one.screw() + ", turning against its force takes ";
    if (one.slope() + one.angle() >= Math.PI / 2) {
      words += "more than any couple: the thread binds";
    } else {
      double against = one.radius() * Math.tan(one.slope() + one.angle());
      words +=
          "r tan(α + φ) = "
              + law.thread(one.radius(), one.slope(), one.angle())
              + " times it, "
              + product(size, against);
    }
    if (one.angle() == 0) {
      return words + ".";
    }
    double with = one.radius() * Math.tan(one.slope() - one.angle());
    return words
        + "; the couple at which the force would just turn it back is r tan(α − φ) = "
        + law.thread(one.radius(), one.slope(), -one.angle())
        + " times it, "
        + product(size, with)
        + (with > 0
            ? ", and less than that does not hold it."
            : with < 0 ? ": it holds by itself." : ": it just holds by itself.");
  }

  private String product(double force, double arm) {
    String length = figures.text(arm, Dimension.LENGTH) + " " + figures.unit(Dimension.LENGTH);
    return force(force) + " · " + length + " = " + couple(force * arm);
  }

  private String verdict(Verdict verdict) {
    if (verdict instanceof Verdict.Holds) {
      return "it holds. Every one-sided or rough part can give what balance asks of it.";
    }
    if (verdict instanceof Verdict.HoldsOnceSeated one) {
      return "it can hold once seated: "
          + Wording.and(one.parts())
          + " must be squeezed beforehand, and statics does not tell whether that was done.";
    }
    if (verdict instanceof Verdict.Impending one) {
      return "it is about to give way, with nothing to spare" + events(one.how()) + ".";
    }
    if (verdict instanceof Verdict.DoesNotHold one) {
      return "it does not hold" + events(one.how()) + "." + after(one.after());
    }
    return "not decided: " + ((Verdict.NotDecided) verdict).why() + ".";
  }

  private static String after(Verdict.After after) {
    return switch (after) {
      case LOADS -> " So it begins while the loads grow from nothing to the stated ones.";
      case FRICTION -> " So it begins while friction falls from enough to the stated one.";
      case NEED -> " These parts would have to give more than they can.";
      case MECHANISM -> " No forces of its parts could balance these loads.";
    };
  }

  private static String events(GivingWay how) {
    List<String> events = how.events().stream().map(LimitWords::event).toList();
    return events.isEmpty() ? "" : ": " + Wording.and(events);
  }

  private static String event(Event event) {
    return event.part() + " " + event.words();
  }

  private String friction(FrictionFactor factor) {
    if (factor instanceof FrictionFactor.Least least) {
      String times = units.format(least.factor(), Dimension.NUMBER, Carried.ANSWER_DIGITS);
      return least.factor() > 1
          ? " All coefficients of friction would have to be " + times + " times what they are."
          : " All coefficients of friction could be " + times + " times what they are.";
    }
    if (factor instanceof FrictionFactor.NotNeeded) {
      return " Friction is not needed for it.";
    }
    if (factor instanceof FrictionFactor.NotEnough) {
      return " However rough its parts, friction is not enough.";
    }
    return factor instanceof FrictionFactor.AnyIsEnough
        ? " Any friction is enough, if the parts are pressed together hard enough beforehand."
        : "";
  }
}
