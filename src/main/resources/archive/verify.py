"""Checks the unpacked archive: hashes, the record's chain, fingerprints, each place of placement judging."""
import hashlib, json, sys
load, sha = lambda name: json.load(open(name, encoding="utf-8")), lambda data: hashlib.sha256(data).hexdigest()
must = lambda right, words: right or sys.exit("NOT AS IT WAS WRITTEN: " + words)
for line in open("manifest.txt", encoding="utf-8"): must(sha(open(line[66:-1], "rb").read()) == line[:64], "the file " + line[66:-1])
NAMES = "form number time actor actorId role device subject subjectId action before after reason evidence previousDigest".split()
before, count, places, about = "0" * 64, 0, 0, load("archive.json")
for line in map(json.loads, open("record/lines.jsonl", encoding="utf-8")):
    count, fields = count + 1, [str(line[name]).encode() for name in NAMES if name in line and (line["form"] == 2 or name not in ("form", "actorId", "evidence"))]
    digest = sha(b"".join(b"%d:%s," % (len(field), field) for field in fields)) if line["form"] else line["digest"]
    must([line["number"], line["previousDigest"], line["digest"]] == [count, before, (before := digest)], "line %d" % count)
must((count, before) == (about["recordLines"], about["recordHead"]), "the end of the record")
events, segments = ({row["id"]: row for row in load("data/%s.json" % name)} for name in ("event", "segment"))
for version in load("data/result_version.json"):
    body, segment, measures, own = version["body"], segments.get(version["scope_id"]), {}, {}
    must(about["public"] and body.endswith("-without-names.json") or sha(open(body, "rb").read()) == version["fingerprint"], "the fingerprint of " + body)
    standing, rules = load(body), json.loads(events[segment["event_id"] if segment else version["scope_id"]]["policies"])
    if standing["method"] not in ("MAJORITY", "ONE_BY_ONE"): continue
    if segment:
        mark = "second" if segment["kind"] == "FREE" and rules["freeSkatingTieBreak"] == "SECOND_MARK" else "first"
        cards = {row["entry"]: [(-card["first"] - card["second"], -card[mark]) for card in row["cards"]] for row in standing["rows"]
                 if row["cards"] and (row["status"] == "SKATED" or rules["disqualifiedPlaces"] != "CLOSE_ALL_PLACES")}
        own = {entry: [100 + 100 * sorted(all).index(card) + (50 * all.count(card) - 50) * (rules["sharedOrdinals"] == "MEAN")
                       for card, all in zip(given, zip(*cards.values()))] for entry, given in cards.items()}
        for entry, mine in own.items():
            top = [value for value in mine if value <= sorted(mine)[len(mine) // 2]]
            even = {"BOTH_WIN": 100, "HALF_EACH": 50, "NEITHER": 0}[rules["equalJudgesInFavour"]]
            votes = [[sum(a <= b for a, b in zip(*pair)) for pair in ((mine, other), (other, mine))] for name, other in own.items() if name != entry]
            measures[entry] = (max(top), -len(top), sum(top), sum(mine)) if standing["method"] == "MAJORITY" else (
                -sum(even if a == b else 100 * (a > b) for a, b in votes), -sum(a for a, b in votes))
    for row in standing["rows"]:
        got = [(at, place, place * column["factor"]) for at, (place, column) in enumerate(zip(row["segmentPlaces"], standing["segments"])) if place]
        if got and (row["status"] in ("SKATED", "WAITING") or (row["status"], rules["disqualifiedPlaces"]) == ("DISQUALIFIED", "LEAVE_GAPS")):
            (at, place, part), total = got[-1], sum(part for at, place, part in got)
            measures[row["entry"]] = (0, total, place) if len(got) == len(standing["segments"]) else (1, -at, place, -len(got), total)
            must(row["total"] == total, "the total of " + row["team"] + " in " + body)
    for row in standing["rows"]:
        mine, places, given = measures.get(row["entry"]), places + 1, [float(card["ordinal"]) * 100 for card in row["cards"] if card["ordinal"]]
        rank = 1 + sum(other < mine for other in measures.values()) if mine and row["status"] == "SKATED" else None
        must(row["place"] == rank and (not segment or given == own.get(row["entry"], [])), "the place of " + row["team"] + " in " + body)
print("As it was written: %d lines of the record, head %s; %d places of placement judging follow from the marks." % (count, before, places))
