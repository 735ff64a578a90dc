package bellcrank.examples;

import bellcrank.examples.file.DeviceFile;
import bellcrank.examples.file.TravelPlan;
import bellcrank.statics.device.Device;
import bellcrank.statics.device.LoadCase;
import bellcrank.statics.device.Member;
import bellcrank.statics.device.Pose;
import bellcrank.statics.drawing.DeviceDrawing;
import bellcrank.statics.geometry.Point;
import bellcrank.statics.motion.Course;
import bellcrank.statics.motion.Travel;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Adds a travel to the picture of a device: a few poses, and the path of what moves farthest. */
final class TravelPicture {

  /** Poses that are drawn as outlines, from one end of the course to the other. */
  private static final int GHOSTS = 5;

  /** Poses that a path is drawn through. */
  private static final int PATH = 61;

  private TravelPicture() {}

  /** The drawing with the travel that the file states; as it is if there is none or no course. */
  static DeviceDrawing onto(DeviceDrawing drawing, DeviceFile file, LoadCase loadCase) {
    Optional<Course> course = file.travel().flatMap(plan -> course(file.device(), loadCase, plan));
    return course.map(found -> onto(drawing, found)).orElse(drawing);
  }

  private static Optional<Course> course(Device device, LoadCase loadCase, TravelPlan plan) {
    return Travel.of(device, loadCase, plan.drive(), plan.from(), plan.to(), plan.meetings())
            instanceof Course course
        ? Optional.of(course)
        : Optional.empty();
  }

  private static DeviceDrawing onto(DeviceDrawing drawing, Course course) {
    List<Pose> way = poses(course, PATH);
    String body = "";
    String point = "";
    double farthest = 0;
    for (Member member : course.device().members()) {
      for (String one : member.points()) {
        double moves = farthest(course.device(), way, member.name(), one);
        // of two that move alike but for rounding, the first
        if (moves > farthest * (1 + 1e-9)) {
          farthest = moves;
          body = member.name();
          point = one;
        }
      }
    }
    DeviceDrawing travelled = drawing.withPoses(poses(course, GHOSTS));
    return farthest > 0 ? travelled.withPathOf(body, point, way) : travelled;
  }

  private static List<Pose> poses(Course course, int count) {
    double least = course.least().drive();
    double way = course.greatest().drive() - least;
    List<Pose> poses = new ArrayList<>();
    for (int i = 0; i < count - 1; i++) {
      poses.add(course.pose(least + way * i / (count - 1)));
    }
    poses.add(course.pose(course.greatest().drive()));
    return poses;
  }

  /** The farthest that a point comes from where it began. */
  private static double farthest(Device device, List<Pose> way, String body, String name) {
    Point drawn = device.point(name);
    Point start = way.get(0).frame(body).apply(drawn);
    double farthest = 0;
    for (Pose pose : way) {
      farthest = Math.max(farthest, start.distance(pose.frame(body).apply(drawn)));
    }
    return farthest;
  }
}
