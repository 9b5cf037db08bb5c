-- Where in the body the personal link stands: a bracket up to its closing one says that it is not kept. Null for none.
alter table letter add column link_at int;
