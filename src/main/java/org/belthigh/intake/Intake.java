package org.belthigh.intake;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.belthigh.catalogue.Catalogue;
import org.belthigh.catalogue.Curriculum;
import org.belthigh.catalogue.Drill;
import org.belthigh.files.Folder;

/** Reads club folders. */
public final class Intake {
  private Intake() {}

  /**
   * The days that {@code text} can mean, as people write them: one where it is clear, two where the
   * day or the month may stand first (the month first, then the day first), none where it is no
   * day.
   */
  public static List<LocalDate> days(String text) {
    return Dates.clear().parse(text).map(List::of).orElseGet(() -> Dates.meanings(text));
  }

  /**
   * {@code catalogue} with the curriculum of the club's own where {@code club.yaml} names one that
   * passes every check; what is wrong in it is told by {@link #read}.
   */
  public static Catalogue catalogue(Path clubFolder, Catalogue catalogue) {
    return OwnCurriculum.with(Folder.of(clubFolder), catalogue);
  }

  /**
   * All whom {@code text} can mean, as the files of a club name players: the one with that id;
   * without one, those with that shirt number or name, whole or in part.
   */
  public static List<Player> called(ClubRecord record, String text) {
    List<Player> byId = record.players().stream().filter(p -> p.id().equals(text)).toList();
    return byId.isEmpty() ? new NameBook<>(record.players()).called(text) : byId;
  }

  /** The drill that {@code text} names, as a log may: by its id, or by its name in any language. */
  public static Optional<Drill> drill(Curriculum curriculum, String text) {
    return new Bearings.Drills(curriculum).find(text);
  }

  /** The id of the drill whose id or name resembles {@code text} most. */
  public static Optional<String> nearestDrill(Curriculum curriculum, String text) {
    return new Bearings.Drills(curriculum).near(text);
  }

  /**
   * Whether a file of that name, right in a club folder, is read as a part of it, or looked at
   * since it may hold what should have been.
   */
  public static boolean reads(String name) {
    return ClubFiles.concerns(name);
  }

  /**
   * The whole folder, resolved against {@code catalogue}: what is wrong is set aside row by row and
   * told in {@link ClubRecord#problems}, in which files are named as {@code clubFolder} names them.
   *
   * @throws Unusable if there is no such folder, no usable club file or no usable roster
   */
  public static ClubRecord read(Path clubFolder, Catalogue catalogue) throws Unusable {
    return new FolderReading(Folder.of(clubFolder), catalogue).read();
  }

  /**
   * The same with another calendar, to see what it would change.
   *
   * @param calendar a file like {@code calendar.csv}, anywhere
   * @throws Unusable as {@link #read(Path, Catalogue)}
   */
  public static ClubRecord read(Path clubFolder, Path calendar, Catalogue catalogue)
      throws Unusable {
    Folder folder = Folder.of(clubFolder).with("calendar.csv", calendar);
    return new FolderReading(folder, catalogue).read();
  }
}
