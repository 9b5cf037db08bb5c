/*
 * What the scripts have to keep to. Layout is as the rest of the project has it; what is dangerous on a page that
 * shows names typed by others (markup made from text) is refused altogether.
 */
import js from "@eslint/js";
import stylistic from "@stylistic/eslint-plugin";
import globals from "globals";

const SCRIPTS = "src/main/resources/static/js/**/*.js";
const TESTS = "src/test/js/**/*.js";

const markup = ["innerHTML", "outerHTML", "insertAdjacentHTML", "setHTMLUnsafe"].map((property) => ({
	property,
	message: "Text that somebody typed must never become markup: use textContent, or parse and import.",
}));

export default [
	{ ignores: ["**/node_modules/"] },
	{
		files: [SCRIPTS, TESTS],
		...js.configs.recommended,
	},
	{
		files: [SCRIPTS, TESTS],
		plugins: { stylistic },
		languageOptions: { ecmaVersion: 2023, sourceType: "module" },
		linterOptions: { reportUnusedDisableDirectives: "error", noInlineConfig: true },
		rules: {
			"no-unused-vars": ["error", { args: "after-used", caughtErrors: "all", ignoreRestSiblings: true }],
			"no-use-before-define": ["error", { functions: false, classes: true, variables: false }],
			"no-shadow": ["error", { builtinGlobals: false }],
			"no-implicit-globals": ["error", { lexicalBindings: true }],
			"prefer-const": ["error", { destructuring: "all" }],
			"no-var": "error",
			"eqeqeq": "error",
			"curly": "error",
			"default-case-last": "error",
			"default-param-last": "error",
			"no-unused-expressions": "error",
			"no-return-assign": ["error", "except-parens"],
			"no-sequences": "error",
			"no-param-reassign": "error",
			"no-implicit-coercion": "error",
			"no-throw-literal": "error",
			"prefer-promise-reject-errors": "error",
			"require-await": "error",
			"no-unmodified-loop-condition": "error",
			"no-constructor-return": "error",
			"no-self-compare": "error",
			"no-unreachable-loop": "error",
			"no-template-curly-in-string": "error",
			"no-lone-blocks": "error",
			"no-useless-rename": "error",
			"no-useless-return": "error",
			"no-useless-concat": "error",
			"no-useless-computed-key": "error",
			"object-shorthand": "error",
			"prefer-arrow-callback": "error",
			"prefer-object-has-own": "error",
			"prefer-object-spread": "error",
			"prefer-rest-params": "error",
			"prefer-spread": "error",
			"dot-notation": "error",
			"no-eval": "error",
			"no-implied-eval": "error",
			"no-new-func": "error",
			"no-script-url": "error",
			"no-alert": "error",
			"no-console": ["error", { allow: ["error"] }],
			"no-restricted-properties": ["error", ...markup, { object: "document", property: "write" }],
			"max-depth": ["error", 3],
			"max-params": ["error", 5],
			"complexity": ["error", 16],
			"stylistic/indent": ["error", "tab", { SwitchCase: 1 }],
			"stylistic/quotes": ["error", "double", { avoidEscape: true }],
			"stylistic/semi": "error",
			"stylistic/brace-style": ["error", "stroustrup", { allowSingleLine: false }],
			"stylistic/comma-dangle": ["error", "only-multiline"],
			"stylistic/arrow-parens": "error",
			"stylistic/eol-last": "error",
			"stylistic/no-trailing-spaces": "error",
			"stylistic/no-multiple-empty-lines": ["error", { max: 1, maxBOF: 0, maxEOF: 0 }],
			"stylistic/no-multi-spaces": "error",
			"stylistic/space-infix-ops": "error",
			"stylistic/keyword-spacing": "error",
		},
	},
	{
		files: [SCRIPTS],
		languageOptions: { globals: globals.browser },
		rules: {
			/* A page names the scripts at the top with a fingerprint: one that is imported too would run twice. */
			"no-restricted-imports": ["error", { patterns: [{ regex: "^(?!\\.\\.?/)|^(\\.\\./)+[^/]+$", message: "Only parts in folders are imported." }] }],
		},
	},
	{
		files: ["src/main/resources/static/js/*.js"],
		rules: {
			"no-restricted-imports": ["error", { patterns: [{ regex: "^(?!\\./)|^\\./[^/]+$", message: "Only parts in folders are imported." }] }],
		},
	},
	{
		/* What other scripts of the page bring along. */
		files: ["follow", "stand/clock", "stand/send", "stand"].map((name) => `src/main/resources/static/js/${name}.js`),
		languageOptions: { globals: { htmx: "readonly" } },
	},
	{
		files: ["src/main/resources/static/js/draw-check.js"],
		languageOptions: { globals: { sha256: "readonly" } },
	},
	{
		files: [TESTS],
		languageOptions: { globals: globals.nodeBuiltin },
	},
];
