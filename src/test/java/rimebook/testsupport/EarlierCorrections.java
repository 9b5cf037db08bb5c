package rimebook.testsupport;

import java.util.List;

/**
 * Corrections as they were stored before they were amendments, one of each kind, and what
 * each has to become.
 *
 * @param columns line, both marks before and after, value before and after, text before
 * and after
 * @param amendment what is kept since
 */
public record EarlierCorrections(List<Object> columns, String amendment) {

	/** One of each kind. */
	public static List<EarlierCorrections> all() {
		return List.of(of(
				"{'kind':'marks','before':{'marks':{'first':560,'second':570}},'after':{'marks':{'first':0,'second':600}}}",
				"", 560, 570, 0, 600, 0, 0, "", ""),
				of("{'kind':'line','before':{'element':12,'component':'','value':-1},'after':{'element':12,'component':'','value':3}}",
						"element:12", 0, 0, 0, 0, -1, 3, "", ""),
				of("{'kind':'line','before':{'element':0,'component':'Skating \\'Skills','value':725},'after':{'element':0,'component':'Skating \\'Skills','value':750}}",
						"component:Skating \"Skills", 0, 0, 0, 0, 725, 750, "", ""),
				of("{'kind':'element','before':{'number':3,'further':false,'code':'ME4','worth':'COUNTS'},'after':{'number':3,'further':false,'code':'M\\\\E','worth':'NO_VALUE'}}",
						"called:3", 0, 0, 0, 0, 0, 0, "ME4", "M\\E NO_VALUE"),
				of("{'kind':'element','before':{'number':10,'further':true,'code':null,'worth':'COUNTS'},'after':{'number':10,'further':true,'code':'I4+pi3','worth':'COUNTS'}}",
						"called:+10", 0, 0, 0, 0, 0, 0, "", "I4+pi3"),
				of("{'kind':'deduction','before':{'number':1,'further':false,'item':'fall','count':2},'after':{'number':1,'further':false,'item':null,'count':0}}",
						"deducted:1", 0, 0, 0, 0, 0, 0, "fall 2", ""),
				of("{'kind':'deduction','before':{'number':1,'further':true,'item':null,'count':0},'after':{'number':1,'further':true,'item':'time','count':15}}",
						"deducted:+1", 0, 0, 0, 0, 0, 0, "", "time 15"),
				of("{'kind':'status','before':{'status':'CLOSED'},'after':{'status':'DISQUALIFIED'}}", "status", 0, 0,
						0, 0, 0, 0, "CLOSED", "DISQUALIFIED"));
	}

	private static EarlierCorrections of(String amendment, Object... columns) {
		return new EarlierCorrections(List.of(columns), amendment.replace('\'', '"'));
	}

}
