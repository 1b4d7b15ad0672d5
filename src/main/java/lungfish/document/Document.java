package lungfish.document;

import java.util.List;

/**
 * What is read on paper or in a browser, in words of its reader's units.
 *
 * @param title of the whole
 * @param subtitle one line below it
 * @param sections in order
 */
public record Document(String title, String subtitle, List<Section> sections) {
    public Document {
        sections = List.copyOf(sections);
    }

    /**
     * Parts under a title.
     *
     * @param key a short word that stays the same: what a link leads to, and how a list is asked for
     * @param newPage whether it begins a page
     */
    public record Section(String key, String title, boolean newPage, List<Part> parts) {
        public Section {
            parts = List.copyOf(parts);
        }
    }
}
