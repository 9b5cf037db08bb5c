-- Two rows of one person: who somebody turned out to be, and whose a place was before. An archive of one competition
-- need not have the other row, so neither refers to it.
alter table skater add column merged_into uuid;
create index skater_merged_into on skater (merged_into);
alter table roster_place add column merged_from uuid;
create index roster_place_merged_from on roster_place (merged_from);
