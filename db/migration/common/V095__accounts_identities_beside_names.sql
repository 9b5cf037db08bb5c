-- Two acts that must come from two people are compared by who acted, not by the name they went by: names change,
-- and one person may hold two roles. What was done before is given the account that has the name now, else the name.
alter table protest add column filed_by_id varchar(130) default '' not null;
alter table correction add column proposed_by_id varchar(130) default '' not null;
alter table segment_result add column referee_signature_id varchar(130) default '' not null;
alter table segment_result add column accountant_signature_id varchar(130) default '' not null;
-- Keyings are never changed: those written before have none and are known by the name.
alter table card_keying add column keyed_by_id varchar(130);

-- Who filed was typed by hand, in any case.
update protest set filed_by_id = coalesce(
  (select min('person:' || cast(p.id as varchar(36))) from person p where lower(p.display_name) = lower(filed_by)),
  '');
update correction set proposed_by_id = coalesce(
  (select 'person:' || cast(p.id as varchar(36)) from person p where p.display_name = proposed_by),
  'name:' || proposed_by);
update segment_result set referee_signature_id = coalesce(
  (select 'person:' || cast(p.id as varchar(36)) from person p where p.display_name = referee_signature),
  'name:' || referee_signature) where referee_signature <> '';
update segment_result set accountant_signature_id = coalesce(
  (select 'person:' || cast(p.id as varchar(36)) from person p where p.display_name = accountant_signature),
  'name:' || accountant_signature) where accountant_signature <> '';
