package leat.log;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** What really happened, as the truth file of a log says. */
record Truth(
    List<Happening> events,
    Map<Long, Double> used,
    double litresAtEnd,
    double meanStep,
    double daysLeft) {
  record Happening(String kind, long start, long end, boolean countable, double litres) {}

  static Truth of(String json) {
    try {
      JsonNode all = new ObjectMapper().readTree(json);
      List<Happening> events = new ArrayList<>();
      for (JsonNode e : all.get("events")) {
        events.add(
            new Happening(
                e.get("kind").asText(),
                millis(e.get("start")),
                millis(e.get("end")),
                e.get("countable").asBoolean(),
                e.path("litres").asDouble(Double.NaN)));
      }
      Map<Long, Double> used = new TreeMap<>();
      for (JsonNode day : all.get("days")) {
        used.put(
            LocalDate.parse(day.get("date").asText()).toEpochDay(), day.get("used_L").asDouble());
      }
      return new Truth(
          events,
          used,
          all.get("at_end").get("litres").asDouble(),
          all.get("mean_step_L").asDouble(),
          all.get("at_end").path("days_left").asDouble(Double.NaN));
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
  }

  private static long millis(JsonNode text) {
    return OffsetDateTime.parse(text.asText()).toInstant().toEpochMilli();
  }
}
