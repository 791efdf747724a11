package leat.command.build;

import java.util.List;
import leat.answer.Answer;
import leat.answer.Column;
import leat.answer.Row;
import leat.answer.Show;
import leat.hydraulics.WallFilms;
import leat.system.Stack;
import leat.system.TowerAt;
import leat.system.Waterway;

/** The film of each kind of module, where small and large pots stand in one tower. */
final class WallWords {
  private static final Column NAME = Column.plain("name", "name");
  private static final Column MODULE = Column.plain("module", "module");
  private static final Column FILM = Column.of("film_mm", "film", Show.MM.digits(2));
  private static final Column FROM = Column.of("from_L_min", "from", Show.L_MIN.digits(2));
  private static final Column TO = Column.of("to_L_min", "to", Show.L_MIN.digits(2));

  private WallWords() {}

  static void write(Answer answer, Waterway way, List<TowerAt> towers) {
    for (int t = 0; t < towers.size(); t++) {
      TowerAt tower = towers.get(t);
      WallFilms films = tower.wallFilms();
      if (films == null) {
        continue;
      }
      modules(answer, tower, films, towers.size() == 1);
      if (!tower.wallsWant().suitsAll()) {
        answer.mind(
            "walls-differ",
            Row.aside(NAME).set(NAME, tower.name()),
            "{name}: no flow suits its widest and its narrowest module; two towers would do better.");
      }
    }
  }

  private static void modules(Answer answer, TowerAt tower, WallFilms films, boolean one) {
    Stack stack = tower.stack();
    for (int i = 0; i < stack.kinds(); i++) {
      Row row = Row.aside(NAME, MODULE, FILM, FROM, TO);
      row.set(NAME, tower.name())
          .set(MODULE, stack.name(i))
          .set(FILM, films.films().get(i).thickness())
          .set(FROM, stack.wall(i).least())
          .set(TO, stack.wall(i).most());
      answer.figure(
          one ? stack.name(i) : tower.name() + ", " + stack.name(i),
          row,
          "{film_mm} of film; {from_L_min} to {to_L_min} suit its wall");
    }
  }
}
