package bellcrank.statics.explain;

import bellcrank.statics.device.Ask;
import bellcrank.statics.device.Clamp;
import bellcrank.statics.device.Connection;
import bellcrank.statics.device.Contact;
import bellcrank.statics.device.ContactBase;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.End;
import bellcrank.statics.device.Guide;
import bellcrank.statics.device.Line;
import bellcrank.statics.device.Pin;
import bellcrank.statics.device.Reeving;
import bellcrank.statics.device.Roller;
import bellcrank.statics.device.Screw;
import bellcrank.statics.device.Slot;
import bellcrank.statics.device.Sought;
import bellcrank.statics.device.Strut;
import bellcrank.statics.device.Wrap;
import bellcrank.statics.equilibrium.Balance;
import bellcrank.statics.explain.Unknown.Kind;
import bellcrank.statics.geometry.Direction;
import bellcrank.statics.geometry.Point;
import bellcrank.statics.geometry.Vector;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** Draws the picture of a device: turns connections and sought quantities into unknowns. */
final class PictureDrawing {

  private static final Vector RIGHT = Vector.of(1, 0);
  private static final Vector UP = Vector.of(0, 1);

  private final Balance balance;
  private final Device device;
  private final Bodies bodies;
  private final Symbols symbols = new Symbols();
  private final UnknownsDrawn drawn = new UnknownsDrawn();

  private PictureDrawing(Balance balance) {
    this.balance = balance;
    device = balance.device();
    bodies = new Bodies(balance);
  }

  static Picture of(Balance balance) {
    PictureDrawing drawing = new PictureDrawing(balance);
    List<KnownLoad> loads = LoadsDrawn.of(balance, drawing.bodies, drawing.symbols);
    List<TwoForceFinder.Bar> bars = TwoForceFinder.find(drawing.device, drawing.bodies, loads);
    drawing.device.connections().stream()
        .sorted(Comparator.comparing(Connection::name))
        .forEach(one -> drawing.connection(one, bars));
    bars.forEach(drawing::bar);
    drawing.device.sought().stream()
        .sorted(Comparator.comparing(Sought::name))
        .forEach(drawing::sought);
    return drawing.drawn.picture(drawing.device, drawing.bodies, loads, bars);
  }

  private void add(Kind kind, Symbol symbol, String part, String on, Ask ask, List<Link> links) {
    Unknown unknown = new Unknown(symbol, part, kind, on, links.get(0).force(), List.of(ask));
    drawn.add(unknown, links);
  }

  private void connection(Connection connection, List<TwoForceFinder.Bar> bars) {
    if (connection instanceof Pin pin) {
      pin(pin, bars);
    } else if (connection instanceof Clamp c) {
      Asks asks = new Asks(c.name());
      component(asks, c.name(), "x", c.at(), c.body(), bodies.number(c.other()), RIGHT);
      component(asks, c.name(), "y", c.at(), c.body(), bodies.number(c.other()), UP);
      couple(asks, c.name(), c.at(), c.body(), bodies.number(c.other()));
    } else if (connection instanceof Roller r) {
      Asks asks = new Asks(r.name());
      square(asks, r.name(), r.at(), r.body(), r.other(), r.push());
    } else if (connection instanceof Slot s) {
      Asks asks = new Asks(s.name());
      square(asks, s.name(), s.at(), s.body(), s.other(), s.along().perpendicular());
    } else if (connection instanceof Guide g) {
      Asks asks = new Asks(g.name());
      square(asks, g.name(), g.at(), g.body(), g.other(), g.along().perpendicular());
      couple(asks, g.name(), g.at(), g.body(), bodies.number(g.other()));
    } else if (connection instanceof Contact c) {
      Asks asks = new Asks(c.name());
      square(asks, c.name(), c.at(), c.body(), c.other(), c.push());
      if (c.friction() > 0) {
        friction(asks, c.name(), c.at(), c.body(), c.other(), c.push());
      }
    } else if (connection instanceof ContactBase b) {
      Asks asks = new Asks(b.name());
      square(asks, b.name(), b.at(), b.body(), b.other(), b.push());
      if (b.friction() > 0) {
        friction(asks, b.name(), b.at(), b.body(), b.other(), b.push());
      }
      couple(asks, b.name(), b.at(), b.body(), bodies.number(b.other()));
    } else if (connection instanceof Strut s) {
      axial(Kind.AXIAL, s.name(), s.first(), s.second());
    } else if (connection instanceof Line l) {
      axial(Kind.ROPE, l.name(), l.first(), l.second());
    } else if (connection instanceof Screw s) {
      axial(Kind.AXIAL, s.name(), s.first(), s.second());
    } else if (connection instanceof Reeving r) {
      List<Link> links = RopeParts.of(r.stops(), RopeParts.multiples(r), bodies);
      String body = r.stops().get(0).body();
      Ask ask = new Asks(r.name()).next();
      add(Kind.ROPE, symbols.of("T", r.name()), r.name(), body, ask, links);
    } else if (connection instanceof Wrap w) {
      wrap(w);
    }
  }

  /** The components of a part, one after the other. */
  private final class Asks {
    private final List<Ask> all;
    private int next;

    Asks(String part) {
      all = bodies.asks(part);
    }

    Ask next() {
      return all.get(next++);
    }

    boolean hasNext() {
      return next < all.size();
    }
  }

  private void pin(Pin pin, List<TwoForceFinder.Bar> bars) {
    Asks asks = new Asks(pin.name());
    boolean own = bodies.isBody(pin);
    List<String> ends = own ? pin.bodies() : List.of(pin.bodies().get(0));
    int couples = asks.all.size() - 2 * ends.size();
    for (String body : ends) {
      int other = bodies.number(own ? Bodies.pinName(pin.name()) : pin.bodies().get(1));
      boolean bar =
          bars.stream()
              .anyMatch(
                  one ->
                      one.at(pin.name())
                          && (own
                              ? one.member().equals(body)
                              : pin.bodies().contains(one.member())));
      if (bar) {
        asks.next();
        asks.next();
        continue;
      }
      String index = own ? " " + body : "";
      component(asks, pin.name(), "x" + index, pin.at(), body, other, RIGHT);
      component(asks, pin.name(), "y" + index, pin.at(), body, other, UP);
      if (couples > 0 && asks.hasNext()) {
        couple(asks, pin.name(), pin.at(), body, other);
      }
    }
  }

  private void component(
      Asks asks, String part, String index, String at, String body, int other, Vector axis) {
    Point place = bodies.place(body, at);
    Link link = new Link(bodies.number(body), other, place, place, axis, 0);
    Symbol symbol = symbols.of(part, index);
    add(Kind.COMPONENT, symbol, part, body, asks.next(), List.of(link));
  }

  private void couple(Asks asks, String part, String at, String body, int other) {
    Point place = bodies.place(body, at);
    Link link = new Link(bodies.number(body), other, place, place, Vector.ZERO, 1);
    add(Kind.COUPLE, symbols.of("M", part), part, body, asks.next(), List.of(link));
  }

  private void square(
      Asks asks, String part, String at, String body, String other, Direction push) {
    turning(Kind.NORMAL, "N", asks, part, at, body, other, push);
  }

  private void friction(
      Asks asks, String part, String at, String body, String other, Direction push) {
    // to the right of the push
    Direction right = push.perpendicular().opposite();
    turning(Kind.FRICTION, "f", asks, part, at, body, other, right);
  }

  private void turning(
      Kind kind,
      String main,
      Asks asks,
      String part,
      String at,
      String body,
      String other,
      Direction drawnDirection) {
    Point place = bodies.place(body, at);
    Vector force =
        balance.pose().isDrawn()
            ? drawnDirection.times(1)
            : balance.pose().frame(other).apply(drawnDirection).times(1);
    Link link = new Link(bodies.number(body), bodies.number(other), place, place, force, 0);
    add(kind, symbols.of(main, part), part, body, asks.next(), List.of(link));
  }

  private void axial(Kind kind, String part, End first, End second) {
    Point a = bodies.place(first.body(), first.at());
    Point b = bodies.place(second.body(), second.at());
    double length = a.distance(b);
    Vector pull = length > 0 ? a.to(b).times(1 / length) : Vector.ZERO;
    Link link = new Link(bodies.number(first.body()), bodies.number(second.body()), a, b, pull, 0);
    Ask ask = new Asks(part).next();
    add(kind, symbols.of("F", part), part, first.body(), ask, List.of(link));
  }

  private void wrap(Wrap wrap) {
    Asks asks = new Asks(wrap.name());
    List<Link> parts =
        RopeParts.of(List.of(wrap.first(), wrap.post(), wrap.last()), List.of(1.0, 1.0), bodies);
    String name = wrap.name();
    String body = wrap.first().body();
    add(Kind.ROPE, symbols.of("T", name + " 1"), name, body, asks.next(), parts.subList(0, 1));
    String post = wrap.post().body();
    add(Kind.ROPE, symbols.of("T", name + " 2"), name, post, asks.next(), parts.subList(1, 2));
  }

  private void bar(TwoForceFinder.Bar bar) {
    Vector pull = bar.pull();
    Link link = new Link(bar.firstOther(), bar.secondOther(), bar.a(), bar.b(), pull, 0);
    List<Ask> asks =
        Stream.concat(bar.first().asks().stream(), bar.second().asks().stream()).toList();
    Unknown unknown =
        new Unknown(
            symbols.of("F", bar.member()), bar.member(), Kind.AXIAL, bar.member(), pull, asks);
    drawn.addBar(unknown, link, bar);
  }

  private void sought(Sought sought) {
    Asks asks = new Asks(sought.name());
    int body = bodies.underLoad(sought.body());
    String name = sought.name();
    if (sought.want() == Sought.Want.COUPLE) {
      Point at = device.middle();
      Link link = new Link(body, Picture.OUTSIDE, at, at, Vector.ZERO, 1);
      Symbol symbol = symbols.of("M", name);
      Kind kind = device.body(sought.body()).isPresent() ? Kind.COUPLE : Kind.TURNING;
      add(kind, symbol, name, sought.body(), asks.next(), List.of(link));
      return;
    }
    String start = sought.at().orElseThrow();
    Point from = bodies.placeUnderLoad(sought.body(), start);
    Point at =
        sought
            .to()
            .map(end -> from.plus(from.to(bodies.placeUnderLoad(sought.body(), end)).times(0.5)))
            .orElse(from);
    if (sought.want() == Sought.Want.COMPONENTS) {
      for (Vector axis : List.of(RIGHT, UP)) {
        Link link = new Link(body, Picture.OUTSIDE, at, at, axis, 0);
        Symbol symbol = symbols.of(name, axis.equals(RIGHT) ? "x" : "y");
        add(Kind.SOUGHT, symbol, name, sought.body(), asks.next(), List.of(link));
      }
      return;
    }
    double g = device.gravity().norm();
    Vector force =
        sought.want() == Sought.Want.MASS
            ? g > 0 ? device.gravity().times(1 / g) : Vector.ZERO
            : sought.direction().orElseThrow().times(1);
    Link link = new Link(body, Picture.OUTSIDE, at, at, force, 0);
    String main = sought.want() == Sought.Want.MASS ? "W" : "P";
    add(Kind.SOUGHT, symbols.of(main, name), name, sought.body(), asks.next(), List.of(link));
  }
}
