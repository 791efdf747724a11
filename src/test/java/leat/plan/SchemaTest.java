package leat.plan;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.InputFormat;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import com.networknt.schema.ValidationMessage;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.yaml.snakeyaml.DumperOptions;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.constructor.SafeConstructor;
import org.yaml.snakeyaml.nodes.Tag;
import org.yaml.snakeyaml.representer.Representer;
import org.yaml.snakeyaml.resolver.Resolver;

/**
 * The schema against a validator. The plans are read by a YAML 1.1 reader that follows anchors and
 * merges, so that this also shows that such a reader takes them as we do.
 */
class SchemaTest {
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final JsonSchema SCHEMA =
      JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
          .getSchema(PlanSchema.text(), InputFormat.JSON);

  /** Leaves dates as text, as YAML 1.2 does. */
  private static final class NoDates extends Resolver {
    @Override
    public void addImplicitResolver(
        Tag tag, java.util.regex.Pattern regexp, String first, int limit) {
      if (!tag.equals(Tag.TIMESTAMP)) {
        super.addImplicitResolver(tag, regexp, first, limit);
      }
    }
  }

  static JsonNode json(String yaml) {
    LoaderOptions options = new LoaderOptions();
    options.setAllowDuplicateKeys(false);
    DumperOptions dumper = new DumperOptions();
    Yaml reader =
        new Yaml(
            new SafeConstructor(options), new Representer(dumper), dumper, options, new NoDates());
    return JSON.valueToTree(reader.load(yaml));
  }

  static Set<ValidationMessage> faults(String yaml) {
    return SCHEMA.validate(json(yaml));
  }

  /** Whether the schema, or YAML itself, refuses a text. */
  static boolean refuses(String yaml) {
    try {
      return !faults(yaml).isEmpty();
    } catch (org.yaml.snakeyaml.error.YAMLException | StackOverflowError e) {
      // A plan that holds itself overflows the converter.
      return true;
    }
  }

  @Test
  void theSchemaIsASchema() throws Exception {
    JsonSchema meta =
        JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
            .getSchema(
                com.networknt.schema.SchemaLocation.of(
                    "https://json-schema.org/draft/2020-12/schema"));
    JsonNode schema = JSON.readTree(PlanSchema.text());
    assertThat(meta.validate(schema)).isEmpty();
    assertThat(schema.at("/properties/pump/properties/power/description").asText())
        .isEqualTo("electrical power");
    assertThat(schema.at("/properties/tank/additionalProperties").asBoolean(true)).isFalse();
  }

  @Test
  void acceptsEveryGoodPlan() {
    for (String plan : Plans.good()) {
      assertThat(faults(plan)).as(plan).isEmpty();
    }
  }

  @Test
  void acceptsEveryExampleAndDefault() {
    for (KeyPath path : KeyPath.all()) {
      Key key = path.key();
      if (key.kind() != null) {
        assertThat(faults(KeysTest.planOf(path.path(), key.example()))).as(path.path()).isEmpty();
      }
      if (key.byDefault() != null) {
        String typed = YamlText.scalar(key.byDefault(), key.kind(), true);
        assertThat(faults(KeysTest.planOf(path.path(), typed))).as(path.path()).isEmpty();
      }
    }
  }

  @Test
  void acceptsAllThatIsReadOfOtherSpellings() {
    String[] plans = {
      "tank: {bottom: 21 x 14 in, top: \"24 in \u00d7 16 in\", height: 1 1/2 ft}\n",
      "pump: {curve: [0 GPH @ 8 ft, 240 GPH@0 ft], measured: 10 L in 65 s, derate: 70%}\n",
      "pump: {measured: 10 L in 65 s @ 330 mm}\n",
      "water: {ec: 450 \u00b5S/cm, temperature: 64 F, alkalinity: 10 dH, ph: \"7.6\"}\n",
      "season: {refill: every 3 d}\n",
      "prices: {life: 5, pump: \u20ac24, other: 48.50 EUR}\n",
      "sender: {edges: [\"7.2 L=27 \u03a9\", 11 L = 43 ohm]}\n",
      "name: 2027\nlimits: {film: 0.3}\n",
      "site:\npump:\ntowers:\n",
      "timing: [{run: 1 min 30 s, rest: 0 s}]\n",
    };
    for (String plan : plans) {
      Plans.plan(plan);
      assertThat(faults(plan)).as(plan).isEmpty();
    }
  }
}
