-- What a correction changes is kept as JSON: of which kind it is, what it was proposed on, what shall be.
alter table correction add column amendment varchar(4000) default '' not null;
-- Corrections from before keep the columns that their lines on the record attest; nothing is written there any more.
alter table correction add column carried boolean default false not null;
update correction set carried = true, amendment = '{"kind":"' || case when line = '' then 'marks' when line = 'status' then 'status'
    when line like 'called:%' then 'element' when line like 'deducted:%' then 'deduction' else 'line' end
    || '","before":' || case
      when line = '' then
        '{"marks":{"first":' || cast(old_first as varchar(12)) || ',"second":' || cast(old_second as varchar(12)) || '}}'
      when line = 'status' then '{"status":"' || old_text || '"}'
      when line like 'element:%' then
        '{"element":' || substring(line from 9) || ',"component":"","value":' || cast(old_value as varchar(12)) || '}'
      when line like 'component:%' then
        '{"element":0,"component":"' || replace(replace(substring(line from 11), '\', '\\'), '"', '\"')
        || '","value":' || cast(old_value as varchar(12)) || '}'
      when line like 'called:%' then
        '{"number":' || replace(substring(line from 8), '+', '')
        || ',"further":' || case when line like 'called:+%' then 'true' else 'false' end
        || case when old_text = '' then ',"code":null,"worth":"COUNTS"}' else ',"code":"'
        || replace(replace(case when position(' ' in old_text) = 0 then old_text else substring(old_text from 1 for position(' ' in old_text) - 1) end, '\', '\\'), '"', '\"')
        || '","worth":"'
        || case when position(' ' in old_text) = 0 then 'COUNTS' else substring(old_text from position(' ' in old_text) + 1) end
        || '"}' end
      else
        '{"number":' || replace(substring(line from 10), '+', '')
        || ',"further":' || case when line like 'deducted:+%' then 'true' else 'false' end
        || case when old_text = '' then ',"item":null,"count":0}' else ',"item":"'
        || replace(replace(case when position(' ' in old_text) = 0 then old_text else substring(old_text from 1 for position(' ' in old_text) - 1) end, '\', '\\'), '"', '\"')
        || '","count":' || substring(old_text from position(' ' in old_text) + 1) || '}' end
    end
    || ',"after":' || case
      when line = '' then
        '{"marks":{"first":' || cast(new_first as varchar(12)) || ',"second":' || cast(new_second as varchar(12)) || '}}'
      when line = 'status' then '{"status":"' || new_text || '"}'
      when line like 'element:%' then
        '{"element":' || substring(line from 9) || ',"component":"","value":' || cast(new_value as varchar(12)) || '}'
      when line like 'component:%' then
        '{"element":0,"component":"' || replace(replace(substring(line from 11), '\', '\\'), '"', '\"')
        || '","value":' || cast(new_value as varchar(12)) || '}'
      when line like 'called:%' then
        '{"number":' || replace(substring(line from 8), '+', '')
        || ',"further":' || case when line like 'called:+%' then 'true' else 'false' end
        || case when new_text = '' then ',"code":null,"worth":"COUNTS"}' else ',"code":"'
        || replace(replace(case when position(' ' in new_text) = 0 then new_text else substring(new_text from 1 for position(' ' in new_text) - 1) end, '\', '\\'), '"', '\"')
        || '","worth":"'
        || case when position(' ' in new_text) = 0 then 'COUNTS' else substring(new_text from position(' ' in new_text) + 1) end
        || '"}' end
      else
        '{"number":' || replace(substring(line from 10), '+', '')
        || ',"further":' || case when line like 'deducted:+%' then 'true' else 'false' end
        || case when new_text = '' then ',"item":null,"count":0}' else ',"item":"'
        || replace(replace(case when position(' ' in new_text) = 0 then new_text else substring(new_text from 1 for position(' ' in new_text) - 1) end, '\', '\\'), '"', '\"')
        || '","count":' || substring(new_text from position(' ' in new_text) + 1) || '}' end
    end || '}';
alter table correction alter column amendment drop default;
alter table correction alter column old_first set default 0;
alter table correction alter column old_second set default 0;
alter table correction alter column new_first set default 0;
alter table correction alter column new_second set default 0;
