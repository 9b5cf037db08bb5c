/** Walks through every page in every state of a competition, as everybody. */
@org.jspecify.annotations.NullMarked
package rimebook.crawl;
