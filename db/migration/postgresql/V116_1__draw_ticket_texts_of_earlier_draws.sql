-- Names could not change so far, so the names of today are those of the draw.
alter table start_position disable trigger start_position_stays;

update start_position s set ticket_text = (
  select normalize(o.seed || '|' || g.name || '|' || t.name || '|' || c.name, NFC)
  from starting_order o, segment g, entry e, team t, club c
  where o.id = s.order_id and g.id = o.segment_id and e.id = s.entry_id and t.id = e.team_id and c.id = t.club_id);

alter table start_position enable trigger start_position_stays;
