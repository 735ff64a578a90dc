package bellcrank.statics.explain;

import bellcrank.statics.device.Ask;
import bellcrank.statics.device.Device;
import bellcrank.statics.geometry.Vector;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Collects unknowns while a picture is drawn. */
final class UnknownsDrawn {

  private final List<Unknown> unknowns = new ArrayList<>();
  private final List<List<Link>> links = new ArrayList<>();
  private final Map<Ask, Picture.Share> shares = new HashMap<>();

  void add(Unknown unknown, List<Link> itsLinks) {
    unknown.asks().forEach(ask -> shares.put(ask, new Picture.Share(unknowns.size(), 1)));
    unknowns.add(unknown);
    links.add(List.copyOf(itsLinks));
  }

  void addBar(Unknown unknown, Link link, TwoForceFinder.Bar bar) {
    // tension pulls the member outwards and what it is pinned to inwards
    share(bar.first(), bar.pull().times(bar.first().onMember() ? -1 : 1));
    share(bar.second(), bar.pull().times(bar.second().onMember() ? 1 : -1));
    unknowns.add(unknown);
    links.add(List.of(link));
  }

  private void share(TwoForceFinder.BarEnd end, Vector force) {
    for (Ask ask : end.asks()) {
      double factor = TwoForceFinder.isX(ask) ? force.x() : force.y();
      shares.put(ask, new Picture.Share(unknowns.size(), factor));
    }
  }

  /** The picture; bodies that have become lines of one unknown are left out. */
  Picture picture(
      Device device, Bodies bodies, List<KnownLoad> loads, List<TwoForceFinder.Bar> bars) {
    Set<String> lines = new HashSet<>();
    List<Step.TwoForceMember> steps = new ArrayList<>();
    for (TwoForceFinder.Bar bar : bars) {
      lines.add(bar.member());
      Symbol symbol =
          unknowns.stream()
              .filter(one -> one.body().equals(bar.member()) && one.part().equals(bar.member()))
              .map(Unknown::symbol)
              .findFirst()
              .orElseThrow();
      steps.add(
          new Step.TwoForceMember(bar.member(), bar.first().pin(), bar.second().pin(), symbol));
    }
    List<String> names = new ArrayList<>();
    BitSet particles = new BitSet();
    int[] number = new int[bodies.names.size()];
    for (int body = 0; body < number.length; body++) {
      String name = bodies.names.get(body);
      number[body] = lines.contains(name) ? Picture.OUTSIDE : names.size();
      if (!lines.contains(name)) {
        particles.set(names.size(), bodies.particles.get(body));
        names.add(name);
      }
    }
    return new Picture(
        List.copyOf(names),
        particles,
        List.copyOf(unknowns),
        links.stream()
            .map(of -> of.stream().map(link -> renumbered(link, number)).toList())
            .toList(),
        loads.stream()
            .map(load -> new KnownLoad(load.name(), load.symbol(), renumbered(load.link(), number)))
            .toList(),
        List.copyOf(steps),
        Map.copyOf(shares),
        bodies.places(),
        device.middle(),
        device.size());
  }

  private static Link renumbered(Link link, int[] number) {
    return new Link(
        number(link.body(), number),
        number(link.other(), number),
        link.at(),
        link.otherAt(),
        link.force(),
        link.couple());
  }

  private static int number(int body, int[] number) {
    return body < 0 ? Picture.OUTSIDE : number[body];
  }
}
