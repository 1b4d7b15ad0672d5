package lungfish.validation;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;

/** The given side of a published row, by name; a name carries its unit. */
public record Inputs(JsonNode node) {
    /** A number that must be there. */
    public double number(String name) {
        JsonNode value = node.path(name);
        if (!value.isNumber()) {
            throw new IllegalArgumentException("input '" + name + "' is not a number in " + node);
        }
        return value.doubleValue();
    }

    /** A number, or what stands for it. */
    public double number(String name, double otherwise) {
        return node.has(name) ? number(name) : otherwise;
    }

    /** A text that must be there. */
    public String text(String name) {
        JsonNode value = node.path(name);
        if (!value.isTextual()) {
            throw new IllegalArgumentException("input '" + name + "' is not a text in " + node);
        }
        return value.textValue();
    }

    /** A list of numbers that must be there. */
    public double[] numbers(String name) {
        double[] numbers = new double[node.path(name).size()];
        for (int i = 0; i < numbers.length; i++) {
            numbers[i] = node.path(name).get(i).doubleValue();
        }
        return numbers;
    }

    /** As a table shows them. */
    String text() {
        List<String> parts = new ArrayList<>();
        node.properties().forEach(each -> parts.add(each.getKey() + " " + shown(each.getValue())));
        return String.join(", ", parts);
    }

    private static String shown(JsonNode value) {
        return value.isTextual() ? value.textValue() : value.toString();
    }
}
