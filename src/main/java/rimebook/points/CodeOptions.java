package rimebook.points;

/**
 * What a called code can become within the table of values.
 *
 * @param levels the signs of the levels it can be given, such as "B1234"
 * @param parts the signs of the levels that its additional part can be given
 * @param withoutPart whether its part can be taken away
 * @param downgrade whether there is another downgrade of it
 */
public record CodeOptions(String levels, String parts, boolean withoutPart, boolean downgrade) {

	static CodeOptions of(String code, CodeChange codes) {
		return new CodeOptions(codes.levels(code), codes.parts(code), codes.canLosePart(code),
				codes.canDowngrade(code));
	}

}
