package rimebook.pages;

/**
 * An entry point on the desk's first page. A module that has one declares it as a bean;
 * it is shown to those who may open its path. The texts are the messages
 * {@code desk.<key>.title} and {@code desk.<key>.text}.
 *
 * @param order where it stands, small numbers first
 * @param path the page it opens, such as {@code /desk/people}
 * @param key the part of the message keys that is its own, such as {@code people}
 */
public record DeskEntry(int order, String path, String key) {
}
