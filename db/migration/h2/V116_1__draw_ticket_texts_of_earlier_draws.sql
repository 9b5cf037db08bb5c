-- Names could not change so far, so the names of today are those of the draw. This database cannot bring a text into
-- normal form C by itself.
create alias ticket_text_of for 'rimebook.draw.DrawTicket.textOf';
drop trigger start_position_stays;

update start_position s set ticket_text = (
  select ticket_text_of(o.seed, g.name, t.name, c.name)
  from starting_order o, segment g, entry e, team t, club c
  where o.id = s.order_id and g.id = o.segment_id and e.id = s.entry_id and t.id = e.team_id and c.id = t.club_id);

create trigger start_position_stays before update, delete on start_position
for each row call 'rimebook.audit.AppendOnlyTrigger';
drop alias ticket_text_of;
